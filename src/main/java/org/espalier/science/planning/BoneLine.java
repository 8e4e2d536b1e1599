package org.espalier.science.planning;

import java.util.Optional;
import org.espalier.science.quantity.Angle;

/**
 * The axis of one bone fragment seen from the front.
 *
 * @param upper a point of it
 * @param lower another, further down
 */
public record BoneLine(LimbPoint upper, LimbPoint lower) {

    /** Below this angle the crossing of two axes is not told: it wanders (judged here; see {@link #levelError}). */
    public static final Angle LEAST_FOR_LEVEL = Angle.ofDegrees(5);

    private static final Angle PARALLEL = Angle.ofDegrees(1);

    /**
     * Checks that the points differ.
     *
     * @throws IllegalArgumentException if they coincide
     */
    public BoneLine {
        if (upper.equals(lower)) {
            throw new IllegalArgumentException("An axis needs two different points, not twice " + upper);
        }
    }

    /**
     * Where this axis and that of the distal fragment cross: the centre of rotation of angulation.
     *
     * @param distal the axis of the fragment below
     * @return empty when the axes run within a degree of each other
     */
    public Optional<LimbPoint> crossing(BoneLine distal) {
        double turn = cross(distal);
        if (Math.abs(turn) < Math.sin(PARALLEL.toRadians()) * length() * distal.length()) {
            return Optional.empty();
        }
        double along = ((distal.upper.lateral() - upper.lateral()) * distal.dy()
                        - (distal.upper.proximal() - upper.proximal()) * distal.dx())
                / turn;
        return Optional.of(new LimbPoint(upper.lateral() + along * dx(), upper.proximal() + along * dy()));
    }

    /**
     * How far the distal axis turns away from this one, (−180, 180] degrees.
     *
     * @param distal the axis of the fragment below
     * @return + when its lower end goes lateral (valgus)
     */
    public Angle towardsLateral(BoneLine distal) {
        return Angle.ofRadians(Math.atan2(cross(distal), dx() * distal.dx() + dy() * distal.dy()));
    }

    /**
     * The standard error of the level at which two axes cross: σ / sin A.
     *
     * @param lineErrorMillimetres standard error of an axis across its length, not negative
     * @param angulation between the axes, not 0
     * @return millimetres
     */
    public static double levelError(double lineErrorMillimetres, Angle angulation) {
        return lineErrorMillimetres / Math.abs(Math.sin(angulation.toRadians()));
    }

    /**
     * How far a point lies beside this axis.
     *
     * @param point anywhere
     * @return millimetres, + on the lateral side of the axis walked downwards
     */
    public double beside(LimbPoint point) {
        double px = point.lateral() - upper.lateral();
        double py = point.proximal() - upper.proximal();
        return (dx() * py - dy() * px) / length();
    }

    private double cross(BoneLine other) {
        return dx() * other.dy() - dy() * other.dx();
    }

    private double length() {
        return Math.hypot(dx(), dy());
    }

    private double dx() {
        return lower.lateral() - upper.lateral();
    }

    private double dy() {
        return lower.proximal() - upper.proximal();
    }
}
