package org.espalier.demo.drawn;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** The foot seen end on: talus below the plafond, heel behind it, midfoot and toes foreshortened in front. */
final class FootShape {

    private final LimbGeometry geometry;
    private final double width;
    private final AffineTransform frame;

    FootShape(LimbGeometry geometry) {
        this.geometry = geometry;
        this.width = geometry.body().kneeWidthMm();
        this.frame = new AffineTransform(geometry.tibia());
        frame.translate(0, geometry.limb().tibia().millimetres());
    }

    List<BonePart> parts() {
        List<BonePart> parts = new ArrayList<>();
        double gap = 0.05 * width;
        AffineTransform level = geometry.plafond();
        level.translate(0, -gap);
        AffineTransform talusFrame = new AffineTransform(geometry.tibia());
        Path2D talus = new Outline()
                .add(
                        level, width, -0.21, -0.02, -0.17, 0.0, 0, -0.008, 0.17, 0, 0.205, -0.03, 0.215, -0.14, 0.25,
                        -0.26, 0.16, -0.36, -0.05, -0.38, -0.19, -0.33, -0.215, -0.18)
                .closed();
        parts.add(BonePart.whole(talus, talusFrame, part(0.16, 0.24)));
        parts.add(oval(0.06, 0.42, 0.24, 0.22, 0.3));
        parts.add(oval(-0.1, 0.44, 0.22, 0.15, 0.18));
        parts.add(oval(0.16, 0.5, 0.17, 0.14, 0.16));
        for (int ray = 0; ray < 5; ray++) {
            parts.add(ray(ray));
        }
        return parts;
    }

    private Profile part(double radius, double depth) {
        return Profile.constant(radius * width, depth * width, 0.004 * width, 0.13);
    }

    private BonePart oval(double x, double y, double halfWidth, double halfHeight, double depth) {
        Path2D outline = new Outline()
                .add(
                        width,
                        x - halfWidth,
                        y,
                        x - 0.7 * halfWidth,
                        y - 0.75 * halfHeight,
                        x,
                        y - halfHeight,
                        x + 0.75 * halfWidth,
                        y - 0.7 * halfHeight,
                        x + halfWidth,
                        y,
                        x + 0.7 * halfWidth,
                        y + 0.75 * halfHeight,
                        x,
                        y + halfHeight,
                        x - 0.7 * halfWidth,
                        y + 0.75 * halfHeight)
                .closed();
        return BonePart.whole(outline, frame, part(halfHeight * 0.8, depth));
    }

    /** A metatarsal and its toe, the first medial and thick. */
    private BonePart ray(int index) {
        double x = -0.24 + 0.125 * index;
        double half = index == 0 ? 0.07 : 0.042;
        double lean = 0.05 * (index - 1.5);
        Path2D outline = new Outline()
                .add(
                        width,
                        x - half,
                        0.52,
                        x,
                        0.47,
                        x + half,
                        0.52,
                        x + lean * 0.5 + half * 0.7,
                        0.66,
                        x + lean + half,
                        0.82,
                        x + lean,
                        0.86,
                        x + lean - half,
                        0.82,
                        x + lean * 0.5 - half * 0.7,
                        0.66)
                .closed();
        return BonePart.whole(outline, frame, Profile.constant(half * width, half * 2 * width, 0.012 * width, 0.12));
    }
}
