package org.espalier.science.alignment;

import java.util.OptionalDouble;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.PlanePoint;

/** What came of fitting a circle to points along a round edge. */
public sealed interface CircleFit {

    /** The least arc that fixes a centre well enough to be used without a warning. */
    Angle LEAST_ARC = new Angle(150);

    /**
     * A fitted circle; lengths are in the unit of the plane.
     *
     * @param centre its centre
     * @param radius its radius, above 0
     * @param arc how much of the circle the points cover: a full turn less the widest gap between neighbours, 0 to 360
     *     degrees
     * @param edgeError standard deviation of the points from the circle, from n − 3 degrees of freedom; empty for three
     *     points, which every circle meets
     * @param centreFactor standard error of the centre in its worst direction, for an edge error of 1
     * @param acrossFactor standard error of the centre across that direction, for an edge error of 1
     * @param radiusFactor standard error of the radius, for an edge error of 1
     */
    record Fitted(
            PlanePoint centre,
            double radius,
            Angle arc,
            OptionalDouble edgeError,
            double centreFactor,
            double acrossFactor,
            double radiusFactor)
            implements CircleFit {

        /** Whether the points cover less than 150 degrees, so that the centre slides along the arc's bisector. */
        public boolean isArcShort() {
            return arc.compareTo(LEAST_ARC) < 0;
        }

        /** The standard error of the centre in its worst direction; empty for three points. */
        public OptionalDouble centreError() {
            return edgeError.isPresent()
                    ? OptionalDouble.of(edgeError.getAsDouble() * centreFactor)
                    : OptionalDouble.empty();
        }

        /** The standard error of the radius; empty for three points. */
        public OptionalDouble radiusError() {
            return edgeError.isPresent()
                    ? OptionalDouble.of(edgeError.getAsDouble() * radiusFactor)
                    : OptionalDouble.empty();
        }
    }

    /**
     * No circle.
     *
     * @param reason why
     */
    record NotFitted(Reason reason) implements CircleFit {}

    /** Why no circle was fitted. */
    enum Reason {
        /** Fewer than three points lie apart from each other. */
        TOO_FEW_POINTS,
        /** The points lie on a straight line, as far as can be told. */
        POINTS_ON_A_LINE,
        /** The search for the best circle did not settle: the points do not lie along one round edge. */
        NOT_ROUND
    }
}
