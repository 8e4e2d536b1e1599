package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * A round cut about a centre through a bone of even width, its middle on the axis through the centre.
 *
 * <p>With r the radius, w the width and θ the turn, the half angle of the arc is α = asin(w / 2r):
 *
 * <pre>
 * depth   = r − √(r² − w²/4)     how much higher the middle of the arc lies than its ends
 * slide   = r θ                  how far the lower part moves along the arc
 * contact = 1 − θ / 2α           part of the arc that still meets, not below 0
 * </pre>
 *
 * <p>The middle of the bone keeps its distance from the centre: no length is gained or lost there.
 *
 * <p>Source: plane geometry. Degenerate input: a radius of half the width is a half circle, below it there is no arc.
 *
 * @param radius from the centre to the cut, at least half the width
 * @param width of the bone at the cut, above 0
 */
public record Dome(Length radius, Length width) {

    /**
     * Checks that the arc reaches across the bone.
     *
     * @throws IllegalArgumentException if it does not
     */
    public Dome {
        if (!(width.millimetres() > 0 && 2 * radius.millimetres() >= width.millimetres())) {
            throw new IllegalArgumentException(
                    "A round cut of radius " + radius + " does not reach across a bone of " + width);
        }
    }

    /** How much higher the middle of the arc lies than its ends. */
    public Length depth() {
        double half = width.millimetres() / 2;
        return new Length(radius.millimetres() - Math.sqrt(radius.millimetres() * radius.millimetres() - half * half));
    }

    /** How far the lower part moves along the arc for a turn of either direction. */
    public Length slide(Angle turn) {
        return new Length(radius.millimetres() * Math.abs(turn.toRadians()));
    }

    /**
     * What part of the arc still meets after a turn of either direction.
     *
     * @return 0 to 1
     */
    public double contact(Angle turn) {
        return Math.max(0, 1 - Math.abs(turn.toRadians()) / arc().toRadians());
    }

    /** The whole arc as seen from the centre, up to 180 degrees. */
    public Angle arc() {
        return Angle.ofRadians(2 * Math.asin(width.millimetres() / (2 * radius.millimetres())));
    }
}
