package org.espalier.science.alignment;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * The tilt that a fanning beam gives a level joint line away from the central ray, when the limb is turned.
 *
 * <pre>
 * tan tilt = −z tan τ / SOD          with SOD from the tube to the line's middle
 * </pre>
 *
 * <p>The width of the line falls out. So a knee off the middle of a small picture cannot stand in for a long film.
 * Source: central projection of a line whose middle lies straight above or below the central ray.
 *
 * @param sourceToObject SOD, above 0
 */
public record ConeBeam(Length sourceToObject) {

    /**
     * Checks the distance.
     *
     * @throws IllegalArgumentException if not above 0
     */
    public ConeBeam {
        if (!(sourceToObject.millimetres() > 0)) {
            throw new IllegalArgumentException("The tube stands before the joint, not at " + sourceToObject);
        }
    }

    /**
     * The tilt seen of a level line.
     *
     * @param height z, of the line above the central ray, negative below
     * @param turn τ, of the line about the upright, between −90 and 90 degrees
     * @return positive where the end turned away from the tube appears higher
     */
    public Angle tilt(Length height, Angle turn) {
        return Angle.ofRadians(
                Math.atan(-height.millimetres() * Math.tan(turn.toRadians()) / sourceToObject.millimetres()));
    }
}
