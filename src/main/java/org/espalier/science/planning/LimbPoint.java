package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;

/**
 * A point of a limb seen from the front, in its own frame.
 *
 * @param lateral millimetres towards the outside, finite
 * @param proximal millimetres towards the hip, finite
 */
public record LimbPoint(double lateral, double proximal) {

    /**
     * Checks that both are numbers.
     *
     * @throws IllegalArgumentException if either is not finite
     */
    public LimbPoint {
        if (!Double.isFinite(lateral) || !Double.isFinite(proximal)) {
            throw new IllegalArgumentException(
                    "A point of a limb has finite coordinates, not " + lateral + ", " + proximal);
        }
    }

    /** The distance to the other point, millimetres. */
    public double distanceTo(LimbPoint other) {
        return Math.hypot(other.lateral - lateral, other.proximal - proximal);
    }

    /**
     * This point turned about a hinge.
     *
     * @param hinge the fixed point
     * @param towardsLateral by how much what lies below the hinge swings outwards (corrects varus); − inwards
     */
    public LimbPoint turnedAbout(LimbPoint hinge, Angle towardsLateral) {
        double sine = Math.sin(towardsLateral.toRadians());
        double cosine = Math.cos(towardsLateral.toRadians());
        double x = lateral - hinge.lateral;
        double y = proximal - hinge.proximal;
        return new LimbPoint(hinge.lateral + x * cosine - y * sine, hinge.proximal + x * sine + y * cosine);
    }
}
