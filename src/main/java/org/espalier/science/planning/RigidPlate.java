package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A plate as a stiff link between two screw heads beside a growth plate: what the growth of the far side makes of it.
 *
 * <p>The middle of the bone grows straight on; the far cortex grows by G; the link keeps its length and may tilt. The
 * turn is close to {@code G / (W + s)}, whatever the plate's length and the spacing of the screws (to 0.3 %). Screws
 * that hold firmly open against each other by just the turn of the joint.
 *
 * <p>Source: rigid-body geometry; in keeping with a bench model (J Pediatr Orthop B 2014) and 68 physes (J Pediatr
 * Orthop B 2023) in which length and first angle of the screws had no effect. Error: what bone, cartilage and loose
 * heads give way is left out; see the observed rates.
 *
 * @param width of the growth plate from the cortex under the plate, above 0
 * @param standOff of the line of the heads outside that cortex, not negative
 * @param headBelow distance of the epiphyseal head from the growth plate, above 0
 * @param headAbove distance of the metaphyseal head from the growth plate, above 0
 */
public record RigidPlate(Length width, Length standOff, Length headBelow, Length headAbove) {

    /**
     * What a growth makes of the plate.
     *
     * @param turn of the joint
     * @param plateSideGrowth by how much the cortex under the plate grew
     * @param tilt of the plate against the shaft, without sign
     */
    public record Position(Angle turn, Length plateSideGrowth, Angle tilt) {}

    /**
     * Checks the lengths.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public RigidPlate {
        if (!(width.millimetres() > 0)
                || !(standOff.millimetres() >= 0)
                || !(headBelow.millimetres() > 0)
                || !(headAbove.millimetres() > 0)) {
            throw new IllegalArgumentException(
                    "A plate lies outside a bone, its heads on both sides of the growth plate");
        }
    }

    /**
     * The turn as the quotient of growth and lever, {@code (G − e) / (W + s)}.
     *
     * @param farGrowth of the far cortex since the plate, not negative
     * @param slack e, growth used up before the plate bites, 0 to the growth
     */
    public Angle turnByLever(Length farGrowth, Length slack) {
        return Angle.ofRadians(
                (farGrowth.millimetres() - slack.millimetres()) / (width.millimetres() + standOff.millimetres()));
    }

    /**
     * The exact position of the link.
     *
     * @param farGrowth of the far cortex since the plate, 0 to a third of the width
     * @throws IllegalArgumentException if the growth is out of range
     */
    public Position after(Length farGrowth) {
        double growth = farGrowth.millimetres();
        if (!(growth >= 0 && growth <= width.millimetres() / 3)) {
            throw new IllegalArgumentException(
                    "Growth under a plate lies between 0 and a third of the width, not at " + growth + " mm");
        }
        double theta = new BrentSolver(1e-14).solve(200, angle -> misfit(angle, growth), -0.01, 0.5);
        double shift = shift(theta);
        return new Position(
                Angle.ofRadians(theta),
                new Length(growth - width.millimetres() * Math.sin(theta)),
                Angle.ofRadians(Math.asin(Math.abs(shift) / span())));
    }

    /** Height of the heads above each other less what the link's length allows; nought at the right turn. */
    private double misfit(double theta, double growth) {
        double half = width.millimetres() / 2;
        double middle = growth - half * Math.sin(theta);
        double rise = middle
                - (half + standOff.millimetres()) * Math.sin(theta)
                + headAbove.millimetres() * Math.cos(theta)
                + headBelow.millimetres();
        double shift = shift(theta);
        return rise - Math.sqrt(span() * span() - shift * shift);
    }

    private double shift(double theta) {
        return (width.millimetres() / 2 + standOff.millimetres()) * (1 - Math.cos(theta))
                - headAbove.millimetres() * Math.sin(theta);
    }

    private double span() {
        return headBelow.millimetres() + headAbove.millimetres();
    }
}
