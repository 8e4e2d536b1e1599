package org.espalier.science.alignment;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * What points set with an error do to angles and to the deviation of the axis.
 *
 * <p>Source: first-order propagation of independent errors; small angles.
 */
public final class PointingError {

    private PointingError() {}

    /**
     * The standard error of a line's direction, √2 σ / ℓ.
     *
     * @param point standard error of either end across the line
     * @param line length of the line, above 0
     */
    public static Angle ofLine(Length point, Length line) {
        return Angle.ofRadians(Math.sqrt(2) * point.millimetres() / line.millimetres());
    }

    /** The standard error of the angle between two lines whose directions have these standard errors. */
    public static Angle ofAngle(Angle first, Angle second) {
        return new Angle(Math.hypot(first.degrees(), second.degrees()));
    }

    /**
     * The turn of an axis when the point at one of its ends is off across it, σ / ℓ.
     *
     * @param point how far the point is off
     * @param axis length of the axis, above 0
     */
    public static Angle ofEnd(Length point, Length axis) {
        return Angle.ofRadians(point.millimetres() / axis.millimetres());
    }

    /**
     * The standard error of the axis deviation, √((T/(F+T))²σ_hip² + (F/(F+T))²σ_ankle² + σ_knee²).
     *
     * @param femur hip to knee
     * @param tibia knee to ankle
     * @param hip standard error of the hip centre across the axis
     * @param ankle standard error of the ankle centre across the axis
     * @param knee standard error of the knee centre across the axis
     */
    public static Length ofAxisDeviation(Length femur, Length tibia, Length hip, Length ankle, Length knee) {
        double whole = femur.millimetres() + tibia.millimetres();
        double fromHip = tibia.millimetres() / whole * hip.millimetres();
        double fromAnkle = femur.millimetres() / whole * ankle.millimetres();
        return new Length(
                Math.sqrt(fromHip * fromHip + fromAnkle * fromAnkle + knee.millimetres() * knee.millimetres()));
    }
}
