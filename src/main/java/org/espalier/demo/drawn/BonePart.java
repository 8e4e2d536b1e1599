package org.espalier.demo.drawn;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One piece of bone to be painted.
 *
 * @param field outline that thickness is taken from, in the frame of the part
 * @param keep only what lies inside is painted; nothing is cut when absent
 * @param toBody from the frame of the part to the body plane
 * @param profile thickness along y of the frame
 * @param seams dense and lucent lines
 */
record BonePart(Shape field, @Nullable Shape keep, AffineTransform toBody, Profile profile, List<Seam> seams) {

    /**
     * A line of denser or lighter bone.
     *
     * @param share of the bone below that stays
     * @param pathMm cortical mm added on the line
     */
    record Seam(Shape line, double widthMm, double share, double pathMm) {

        static Seam dense(Shape line, double widthMm, double pathMm) {
            return new Seam(line, widthMm, 1, pathMm);
        }

        static Seam lucent(Shape line, double widthMm, double share) {
            return new Seam(line, widthMm, share, 0);
        }
    }

    static BonePart whole(Shape field, AffineTransform toBody, Profile profile) {
        return new BonePart(field, null, toBody, profile, List.of());
    }
}
