package org.espalier.science.alignment;

import org.espalier.science.quantity.Angle;

/**
 * A straight axis out of plumb from the front and from the side, seen while the limb is turned about the upright.
 *
 * <pre>
 * tan v' = tan v cos ρ + tan p sin ρ          slope at ρ = 0: tan p cos² v
 * </pre>
 *
 * <p>with ρ positive for external turn when v is varus and p flexion or procurvatum. Neither a turn nor a flexion alone
 * moves v much; both together do.
 *
 * <p>Source: parallel projection; that outward turn reads as more varus agrees with 7 of 8 studies in Ahrend and
 * others, Arch Orthop Trauma Surg 2022;142:3349. Error: parallel rays; the fan of the beam is in {@link ConeBeam}.
 *
 * @param frontal v, −80 to 80 degrees, positive in varus
 * @param sagittal p, −80 to 80 degrees, positive in flexion or procurvatum
 */
public record TurnedAxis(Angle frontal, Angle sagittal) {

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if either lies outside −80 to 80 degrees
     */
    public TurnedAxis {
        if (Math.abs(frontal.degrees()) > 80 || Math.abs(sagittal.degrees()) > 80) {
            throw new IllegalArgumentException(
                    "An axis leans by up to 80 degrees, not by " + frontal + " and " + sagittal);
        }
    }

    /** The frontal angle on a film of the limb turned this far, −90 to 90 degrees, outward positive. */
    public Angle seen(Angle turn) {
        return Angle.ofRadians(Math.atan(Math.tan(frontal.toRadians()) * Math.cos(turn.toRadians())
                + Math.tan(sagittal.toRadians()) * Math.sin(turn.toRadians())));
    }

    /** How much more varus it shows when turned this far. */
    public Angle error(Angle turn) {
        return seen(turn).minus(frontal);
    }

    /** Degrees of frontal angle for each degree of turn, near none. */
    public double slope() {
        double cosine = Math.cos(frontal.toRadians());
        return Math.tan(sagittal.toRadians()) * cosine * cosine;
    }
}
