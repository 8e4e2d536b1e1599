package org.espalier.demo.drawn;

import java.util.EnumSet;
import java.util.Set;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * What is to be drawn: the child's size, both legs, how plump, on which sheet, with which grain.
 *
 * @param plump 1 for a slim child to 1.8 for a very heavy one
 * @param seed the same order with the same seed gives the same film, pixel by pixel
 * @param shown the legs that fit on the sheet; a child may be too wide for both
 * @param contrast whether the knees are filled with contrast
 */
public record FilmOrder(
        BodyProportions body,
        DrawnLimb right,
        DrawnLimb left,
        double plump,
        FilmSheet sheet,
        long seed,
        Set<Side> shown,
        boolean contrast) {

    /** Both legs on one sheet. */
    public FilmOrder(BodyProportions body, DrawnLimb right, DrawnLimb left, double plump, FilmSheet sheet, long seed) {
        this(body, right, left, plump, sheet, seed, EnumSet.allOf(Side.class), false);
    }

    public FilmOrder {
        shown = Set.copyOf(shown);
        if (shown.isEmpty()) {
            throw new IllegalArgumentException("a sheet shows a leg or two");
        }
        if (!(plump >= 1 && plump <= 1.8)) {
            throw new IllegalArgumentException("plump must be 1 to 1.8: " + plump);
        }
    }

    boolean isOnSheet(Side side) {
        return shown.contains(side);
    }

    /**
     * The detector and where things stand before it.
     *
     * @param pixel side of a square pixel at the detector
     * @param magnification of the plane of the bones, 1 to 1.3
     * @param ballMagnification of the plane of the calibration ball, 1 to 1.3
     * @param ball diameter of the calibration ball
     */
    public record FilmSheet(Length pixel, double magnification, double ballMagnification, Length ball) {

        public FilmSheet {
            if (!(magnification >= 1 && magnification <= 1.3 && ballMagnification >= 1 && ballMagnification <= 1.3)) {
                throw new IllegalArgumentException(
                        "magnification must be 1 to 1.3: " + magnification + ", ball " + ballMagnification);
            }
        }

        /** A detector with that pixel, bones at 1.05 and a 25 mm ball at their level. */
        public static FilmSheet ofPixel(Length pixel) {
            return new FilmSheet(pixel, 1.05, 1.05, new Length(25));
        }
    }
}
