package org.espalier.demo.drawn;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * What stops more rays than bone: plates with their screws, the calibration ball, side letters, contrast in a joint.
 */
final class MetalShape {

    /** How many mm of cortical bone a mm of metal counts for. */
    private static final double DENSITY = 5;

    private MetalShape() {}

    static List<BonePart> plates(LimbGeometry leg) {
        List<BonePart> parts = new ArrayList<>();
        for (DrawnPlate plate : leg.limb().plates()) {
            parts.addAll(plate(leg, plate));
        }
        return parts;
    }

    /** In a frame with x out of the bone at the physis and y from the epiphysis to the metaphysis. */
    private static List<BonePart> plate(LimbGeometry leg, DrawnPlate plate) {
        boolean femur = plate.bone() == DrawnPlate.Bone.FEMUR;
        double width = leg.body().kneeWidthMm();
        double size = Math.clamp(width / 70, 0.7, 1);
        AffineTransform frame = new AffineTransform(femur ? leg.femur() : leg.tibia());
        frame.concatenate(femur ? leg.condyles() : leg.tibialPhysis());
        double physis = femur ? leg.femoralEpiphysisMm() : 0;
        frame.translate(0, physis);
        frame.scale(plate.face() == DrawnPlate.Face.MEDIAL ? -1 : 1, 1);
        frame.translate(0.5 * width, 0);
        List<BonePart> parts = new ArrayList<>();
        double hole = 7.5 * size;
        double thick = 1.3 * size;
        parts.add(solid(strip(hole, thick), frame, 1.2, 5 * size));
        double half = plate.divergence().degrees() / 2;
        double length = Math.min(32, 0.4 * width);
        parts.addAll(screw(frame, thick, -hole, 180 + half, size, length));
        parts.addAll(screw(frame, thick * 0.7, hole, 180 - half, size, length));
        return parts;
    }

    private static Path2D strip(double hole, double thick) {
        return new Outline()
                .add(
                        1,
                        0,
                        -hole * 1.55,
                        thick * 1.6,
                        -hole * 1.5,
                        thick * 1.9,
                        -hole,
                        thick * 1.7,
                        0,
                        thick * 1.4,
                        hole,
                        thick * 0.6,
                        hole * 1.55,
                        -thick * 0.8,
                        hole * 1.6,
                        -thick * 0.4,
                        hole,
                        0.2,
                        0,
                        0.3,
                        -hole)
                .closed();
    }

    private static List<BonePart> screw(
            AffineTransform plate, double x, double y, double degrees, double size, double length) {
        AffineTransform frame = new AffineTransform(plate);
        frame.translate(x, y);
        frame.rotate(Math.toRadians(degrees));
        double core = 1.55 * size;
        double thread = 2.15 * size;
        Outline outline = new Outline().add(1, -0.5, -core);
        for (double at = 1.5; at < length - 2; at += 1.6) {
            outline.add(1, at, -core, at + 0.8, -thread);
        }
        outline.add(1, length - 0.6, -core * 0.8, length, 0, length - 0.6, core * 0.8);
        for (double at = length - 2.4; at > 1.5; at -= 1.6) {
            outline.add(1, at + 0.4, thread, at - 0.4, core);
        }
        outline.add(1, -0.5, core);
        Path2D hollow = new Outline().add(1, -1, 0, length, 0).open();
        BonePart shank = new BonePart(
                outline.polygon(),
                null,
                frame,
                Profile.constant(thread, thread * DENSITY, 50, 1),
                List.of(BonePart.Seam.lucent(hollow, 1.1 * size, 0.6)));
        Shape head = new Ellipse2D.Double(-2.2 * size, -3.2 * size, 2.8 * size, 6.4 * size);
        return List.of(shank, solid(head, frame, 1.4 * size, 2.6 * size));
    }

    /** A ball as the ray from the tube enlarges it. */
    static BonePart ball(Point2D centre, double radius) {
        Shape circle = new Ellipse2D.Double(centre.getX() - radius, centre.getY() - radius, 2 * radius, 2 * radius);
        return solid(circle, new AffineTransform(), radius, 4 * radius);
    }

    /** Contrast that fills the knee from edge to edge. */
    static BonePart contrast(LimbGeometry leg) {
        double width = 1.02 * leg.body().kneeWidthMm();
        double gap = leg.body().jointGapMm();
        Shape film = new Ellipse2D.Double(-width / 2, -1.15 * gap, width, 1.3 * gap);
        return BonePart.whole(film, leg.tibia(), Profile.constant(gap, 26, 1000, 1));
    }

    static BonePart lead(String letter, Point2D corner, double height) {
        AffineTransform frame = AffineTransform.getTranslateInstance(corner.getX(), corner.getY());
        return solid(Letters.text(letter, height, height * 0.17), frame, 0.4, 4);
    }

    private static BonePart solid(Shape shape, AffineTransform frame, double radius, double depth) {
        return BonePart.whole(shape, frame, Profile.constant(radius, depth * DENSITY, 1000, 1));
    }
}
