package org.espalier.science.planning;

import java.util.Optional;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * The line from hip to ankle of a leg of two straight segments, and what a bend at some level does to it at the knee.
 *
 * <p>Source: plane geometry.
 *
 * @param femur hip to knee, above 0
 * @param tibia knee to ankle, above 0
 */
public record LegAxis(Length femur, Length tibia) {

    /**
     * Checks the lengths.
     *
     * @throws IllegalArgumentException if one is not above 0
     */
    public LegAxis {
        if (!(femur.millimetres() > 0) || !(tibia.millimetres() > 0)) {
            throw new IllegalArgumentException("A bone is longer than 0, not " + femur + ", " + tibia);
        }
    }

    /**
     * The deviation of the axis at the knee for a bend there: F T sin θ / √(F² + T² + 2FT cos θ).
     *
     * @param bend between the axes of femur and tibia, + varus
     * @return + medial
     */
    public Length deviation(Angle bend) {
        double f = femur.millimetres();
        double t = tibia.millimetres();
        double radians = bend.toRadians();
        return new Length(f * t * Math.sin(radians) / Math.sqrt(f * f + t * t + 2 * f * t * Math.cos(radians)));
    }

    /** By how much the axis moves at the knee for the first degree of bend there: F T / (F + T) · π/180. */
    public Length deviationPerDegree() {
        return new Length(femur.millimetres()
                * tibia.millimetres()
                / (femur.millimetres() + tibia.millimetres())
                * Math.PI
                / 180);
    }

    /**
     * The deviation at the knee for a bend of the tibia below it.
     *
     * @param bend of the tibia, + varus
     * @param belowKnee where, 0 to the length of the tibia
     * @return + medial
     */
    public Length deviationByTibia(Angle bend, Length belowKnee) {
        return deviationByBend(femur.millimetres(), tibia.millimetres(), bend, belowKnee);
    }

    /**
     * The deviation at the knee for a bend of the femur above it.
     *
     * @param bend of the femur, + varus
     * @param aboveKnee where, 0 to the length of the femur
     * @return + medial
     */
    public Length deviationByFemur(Angle bend, Length aboveKnee) {
        return deviationByBend(tibia.millimetres(), femur.millimetres(), bend, aboveKnee);
    }

    /**
     * Knee at the origin, the whole bone straight above, the bent one below: distance of the knee from the end-to-end
     * line.
     */
    private static Length deviationByBend(double whole, double bent, Angle bend, Length fromKnee) {
        double c = fromKnee.millimetres();
        if (!(c >= 0 && c <= bent)) {
            throw new IllegalArgumentException("The bend lies within the bone, not " + fromKnee + " from the knee");
        }
        double across = (bent - c) * Math.sin(bend.toRadians());
        double along = whole + c + (bent - c) * Math.cos(bend.toRadians());
        return new Length(whole * across / Math.hypot(across, along));
    }

    /**
     * The correction at a hinge that brings the line from hip to ankle through a point at the level of the knee.
     *
     * <p>The ankle moves on a circle about the hinge until it meets the ray from the hip through the point. It leaves
     * the opening of the joint line as it is.
     *
     * @param hip centre of the femoral head
     * @param ankle centre of the ankle
     * @param hinge about which all below it turns
     * @param target where the line is to pass
     * @return + swings the ankle outwards; empty when the circle does not meet the ray
     */
    public static Optional<Angle> correction(LimbPoint hip, LimbPoint ankle, LimbPoint hinge, LimbPoint target) {
        double reach = hip.distanceTo(target);
        double ux = (target.lateral() - hip.lateral()) / reach;
        double uy = (target.proximal() - hip.proximal()) / reach;
        double along = (hinge.lateral() - hip.lateral()) * ux + (hinge.proximal() - hip.proximal()) * uy;
        double foot = hip.distanceTo(hinge);
        double radius = hinge.distanceTo(ankle);
        double beyond = radius * radius - (foot * foot - along * along);
        if (beyond < 0) {
            return Optional.empty();
        }
        double far = along + Math.sqrt(beyond);
        LimbPoint moved = new LimbPoint(hip.lateral() + far * ux, hip.proximal() + far * uy);
        double turn = bearing(hinge, moved) - bearing(hinge, ankle);
        return Optional.of(Angle.ofRadians(Math.IEEEremainder(turn, 2 * Math.PI)));
    }

    private static double bearing(LimbPoint from, LimbPoint to) {
        return Math.atan2(to.proximal() - from.proximal(), to.lateral() - from.lateral());
    }
}
