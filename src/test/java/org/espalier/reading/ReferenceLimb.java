package org.espalier.reading;

import java.util.ArrayList;
import java.util.List;
import org.espalier.science.quantity.Side;

/**
 * A limb of known geometry as a reader would mark it. The case is constructed, C2 of the table of coordinate cases:
 * tibia vara with mLDFA 89.99, mMPTA 72.00, JLCA 4.01 and HKA 22.00 degrees, MAD −39.06 mm; x lateral, y distal,
 * millimetres.
 */
final class ReferenceLimb {

    static final double MLDFA = 89.99;
    static final double MMPTA = 72.00;
    static final double JLCA = 4.01;
    static final double HKA = 22.00;
    static final double MAD = -39.06;

    private static final double HEAD_RADIUS = 11;
    private static final double PLATEAU_LATERAL = 39.565;
    private static final double PLATEAU_DISTAL = 232.66;

    private final Side side;
    private final double x;
    private final double mmPerPixelX;
    private final double mmPerPixelY;
    private final double straightened;

    /** The limb of the side with its hip centre at the place given, on a film that faces the reader. */
    ReferenceLimb(Side side, double x, double mmPerPixelX, double mmPerPixelY) {
        this(side, x, mmPerPixelX, mmPerPixelY, 0);
    }

    private ReferenceLimb(Side side, double x, double mmPerPixelX, double mmPerPixelY, double straightened) {
        this.side = side;
        this.x = x;
        this.mmPerPixelX = mmPerPixelX;
        this.mmPerPixelY = mmPerPixelY;
        this.straightened = straightened;
    }

    /** The same limb with the tibia turned out of varus by so many degrees about the middle of its plateau. */
    ReferenceLimb straightened(double degrees) {
        return new ReferenceLimb(side, x, mmPerPixelX, mmPerPixelY, degrees);
    }

    List<PlacedPoint> points() {
        return List.of(
                point("condyle_medial", 13.91, 230.94),
                point("condyle_lateral", 63.21, 222.55),
                point("plateau_medial", 14.69, 235.12),
                point("plateau_lateral", 64.44, 230.20),
                turned("plafond_medial", -14.65, 410.17),
                turned("plafond_lateral", 14.65, 416.59));
    }

    /** Middles of both shafts, besides: with them the angle of the shafts is measured too. */
    List<PlacedPoint> shafts() {
        return List.of(
                point("femur_shaft_proximal", 15, 60),
                point("femur_shaft_distal", 36, 200),
                turned("tibia_shaft_proximal", 31.65, 268.81),
                turned("tibia_shaft_distal", 7.91, 377.24));
    }

    /**
     * Corners of both metaphyses and the base of the ossification centre: MDA 12.35 degrees to the mid-shaft line, as
     * the shaft leans by atan(23.74 / 108.43) and the corners lie level.
     */
    List<PlacedPoint> metaphyses() {
        return List.of(
                point("femur_beak_medial", 14, 205),
                point("femur_beak_lateral", 62, 205),
                turned("epiphysis_base_medial", 22, 238),
                turned("epiphysis_base_lateral", 58, 236),
                turned("beak_medial", 18, 245),
                turned("beak_lateral", 60, 245));
    }

    private PlacedPoint turned(String landmark, double lateral, double distal) {
        double sine = Math.sin(Math.toRadians(straightened));
        double cosine = Math.cos(Math.toRadians(straightened));
        double across = lateral - PLATEAU_LATERAL;
        double along = distal - PLATEAU_DISTAL;
        return point(
                landmark,
                PLATEAU_LATERAL + across * cosine + along * sine,
                PLATEAU_DISTAL - across * sine + along * cosine);
    }

    /** Points on the edge of the femoral head over the arc given. */
    EdgePoints head(double arcDegrees) {
        var edge = new ArrayList<EdgePoints.EdgePoint>();
        for (int i = 0; i < 9; i++) {
            double turn = Math.toRadians(180 + i * arcDegrees / 8);
            var point = point("", HEAD_RADIUS * Math.cos(turn), HEAD_RADIUS * Math.sin(turn));
            edge.add(new EdgePoints.EdgePoint(point.x(), point.y()));
        }
        return new EdgePoints(side, "hip_centre", edge);
    }

    PlacedPoint point(String landmark, double lateral, double distal) {
        double toTheRight = side == Side.RIGHT ? -lateral : lateral;
        return new PlacedPoint(side, landmark, x + toTheRight / mmPerPixelX, 300 + distal / mmPerPixelY);
    }

    Marks marks() {
        return new Marks(points(), List.of(head(240)));
    }
}
