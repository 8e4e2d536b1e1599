package org.espalier.demo.drawn;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** Both hip bones and the sacrum, hung between the two hip centres; sizes are shares of half their distance. */
final class PelvisShape {

    private static final double[] WING = {
        1.34, -0.5, 1.3, -0.62, 1.4, -0.8, 1.46, -1.0, 1.4, -1.22, 1.22, -1.4, 0.96, -1.48, 0.7, -1.4, 0.5, -1.2, 0.42,
        -0.98, 0.47, -0.76, 0.58, -0.55, 0.63, -0.38, 0.64, -0.2
    };
    private static final double[] PUBIS = {
        0.64, 0.07, 0.5, 0.11, 0.3, 0.22, 0.13, 0.29, 0.06, 0.38, 0.06, 0.6, 0.12, 0.68, 0.27, 0.77, 0.44, 0.94, 0.6,
        1.05, 0.77, 1.03, 0.87, 0.88, 0.86, 0.7, 0.84, 0.55
    };
    private static final double[] POSTERIOR_WALL = {
        0.7, -0.2, 0.95, -0.33, 1.14, -0.22, 1.08, 0.02, 1.0, 0.2, 0.88, 0.38, 0.74, 0.32, 0.68, 0.12
    };
    private static final double[] FORAMEN = {
        0.3, 0.46, 0.4, 0.36, 0.54, 0.34, 0.65, 0.44, 0.7, 0.6, 0.66, 0.78, 0.54, 0.84, 0.42, 0.76, 0.33, 0.62
    };
    private static final double[] SACRUM = {
        -0.62, -1.3, -0.3, -1.36, 0, -1.3, 0.3, -1.36, 0.62, -1.3, 0.58, -1.0, 0.46, -0.72, 0.3, -0.46, 0.16, -0.28,
        0.06, -0.06, 0, 0, -0.06, -0.06, -0.16, -0.28, -0.3, -0.46, -0.46, -0.72, -0.58, -1.0
    };

    private final BodyProportions body;
    private final Point2D right;
    private final Point2D left;

    PelvisShape(BodyProportions body, Point2D right, Point2D left) {
        this.body = body;
        this.right = right;
        this.left = left;
    }

    List<BonePart> parts() {
        double unit = left.distance(right) / 2;
        List<BonePart> parts = new ArrayList<>();
        for (Point2D hip : List.of(right, left)) {
            AffineTransform frame = frame(hip);
            parts.add(wing(frame, unit));
            parts.add(ischium(frame, unit));
            parts.add(posteriorWall(frame, unit));
        }
        parts.add(sacrum(frame(left), unit));
        return parts;
    }

    private AffineTransform frame(Point2D hip) {
        double midX = (left.getX() + right.getX()) / 2;
        double midY = (left.getY() + right.getY()) / 2;
        double tilt = Math.atan2(left.getY() - right.getY(), left.getX() - right.getX());
        AffineTransform frame = AffineTransform.getTranslateInstance(midX, midY);
        frame.rotate(tilt);
        frame.scale(hip.equals(left) ? 1 : -1, 1);
        return frame;
    }

    /** Ilium down to the roof of the socket. */
    private BonePart wing(AffineTransform frame, double unit) {
        double socket = socketRadius();
        Outline outline = new Outline().add(unit, WING);
        outline.add(unit, 0.66, -0.07);
        arc(outline, unit, socket, 196, 318);
        outline.add(unit, 1.29, -0.3, 1.27, -0.4);
        Profile profile = Profile.of(
                new double[] {-1.5 * unit, 0.12 * unit, 0.1 * unit, 0.018 * unit, 0.15},
                new double[] {-1.0 * unit, 0.25 * unit, 0.06 * unit, 0.013 * unit, 0.15},
                new double[] {-0.55 * unit, 0.25 * unit, 0.12 * unit, 0.013 * unit, 0.16},
                new double[] {-0.3 * unit, 0.2 * unit, 0.22 * unit, 0.013 * unit, 0.18},
                new double[] {0.2 * unit, 0.2 * unit, 0.2 * unit, 0.013 * unit, 0.18});
        return new BonePart(outline.closed(), null, frame, profile, List.of(roof(unit, socket), rim(unit)));
    }

    private double socketRadius() {
        return Math.max(body.headRadiusMm() + 2.5, 0.36 * body.hipHalfMm() * 0.8);
    }

    private static void arc(Outline outline, double unit, double radius, int from, int to) {
        for (int degrees = from; degrees <= to; degrees += 14) {
            double a = Math.toRadians(degrees);
            outline.add(new Point2D.Double(unit + radius * Math.cos(a), radius * Math.sin(a)));
        }
    }

    private static BonePart.Seam roof(double unit, double radius) {
        Outline line = new Outline();
        arc(line, unit, radius + 0.02 * unit, 215, 315);
        return BonePart.Seam.dense(line.open(), 0.04 * unit, 0.09 * unit);
    }

    private static BonePart.Seam rim(double unit) {
        Path2D line = new Outline()
                .add(unit, 0.45, -0.86, 0.52, -0.66, 0.6, -0.46, 0.645, -0.26, 0.655, -0.06)
                .open();
        return BonePart.Seam.dense(line, 0.03 * unit, 0.05 * unit);
    }

    /** Pubis and ischium around the obturator foramen, parted from the ilium while the triradiate cartilage is open. */
    private BonePart ischium(AffineTransform frame, double unit) {
        Outline outline = new Outline().add(unit, PUBIS);
        arc(outline, unit, socketRadius() + 0.05 * unit, 118, 182);
        Area area = new Area(outline.closed());
        area.subtract(new Area(new Outline().add(unit, FORAMEN).closed()));
        Profile profile = Profile.of(
                new double[] {0, 0.11 * unit, 0.13 * unit, 0.014 * unit, 0.17},
                new double[] {0.6 * unit, 0.12 * unit, 0.14 * unit, 0.014 * unit, 0.17},
                new double[] {0.9 * unit, 0.16 * unit, 0.19 * unit, 0.014 * unit, 0.17});
        return new BonePart(area, null, frame, profile, List.of());
    }

    /** The back of the socket, seen through the head. */
    private static BonePart posteriorWall(AffineTransform frame, double unit) {
        Profile profile = Profile.constant(0.14 * unit, 0.07 * unit, 0.008 * unit, 0.2);
        return BonePart.whole(new Outline().add(unit, POSTERIOR_WALL).closed(), frame, profile);
    }

    private static BonePart sacrum(AffineTransform frame, double unit) {
        Profile profile = Profile.of(
                new double[] {-1.4 * unit, 0.35 * unit, 0.2 * unit, 0.005 * unit, 0.13},
                new double[] {-0.5 * unit, 0.25 * unit, 0.12 * unit, 0.005 * unit, 0.13},
                new double[] {0, 0.06 * unit, 0.05 * unit, 0.008 * unit, 0.15});
        List<BonePart.Seam> lines = new ArrayList<>();
        for (int level = 0; level < 4; level++) {
            double y = (-1.12 + 0.21 * level) * unit;
            double x = (0.27 - 0.04 * level) * unit;
            double half = (0.065 - 0.008 * level) * unit;
            for (int side = -1; side <= 1; side += 2) {
                lines.addAll(foramen(side * x, y, half));
            }
        }
        return new BonePart(new Outline().add(unit, SACRUM).closed(), null, frame, profile, lines);
    }

    private static List<BonePart.Seam> foramen(double x, double y, double half) {
        Path2D hole = new Outline().add(1, x - 0.4 * half, y, x + 0.4 * half, y).open();
        Path2D brow = new Outline()
                .add(
                        1,
                        x - 1.2 * half,
                        y - 0.1 * half,
                        x - 0.6 * half,
                        y - 0.9 * half,
                        x,
                        y - 1.15 * half,
                        x + 0.6 * half,
                        y - 0.9 * half,
                        x + 1.2 * half,
                        y - 0.1 * half)
                .open();
        return List.of(
                BonePart.Seam.lucent(hole, 1.7 * half, 0.72),
                BonePart.Seam.lucent(hole, 1.0 * half, 0.8),
                BonePart.Seam.dense(brow, 0.3 * half, 0.25 * half));
    }
}
