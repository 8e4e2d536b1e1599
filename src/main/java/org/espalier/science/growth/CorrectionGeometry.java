package org.espalier.science.growth;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * What holding one side of a growth plate does to angle and length.
 *
 * <p>One side stands still and the other grows by G over the width W: the joint turns by atan(G/W).
 *
 * <p>Source: Bowen, Leahey, Zhang and MacEwen, Clin Orthop Relat Res 1985;198:184 (concept, from memory). Error: a
 * plate is no perfect hinge; observed rates are 0.65 to 0.95 of it ({@link #EFFICIENCY}), and against 22 published
 * series sums of this kind missed the range of a third (J Orthop Surg Res 2017;12, PMC5504749).
 */
public final class CorrectionGeometry {

    /** What part of the full turn a plate brings about, in the middle (judged from observed rates). */
    public static final double EFFICIENCY = 0.80;

    /** The least of it. */
    public static final double LEAST_EFFICIENCY = 0.65;

    private CorrectionGeometry() {}

    /**
     * The turn of the joint when one side is held entirely.
     *
     * @param growth of the free side, not below 0
     * @param width of the plate, above 0
     * @return 0 to below 90 degrees
     * @throws IllegalArgumentException if a length is out of range
     */
    public static Angle angle(Length growth, Length width) {
        return Angle.ofRadians(Math.atan2(notNegative(growth), positive(width)));
    }

    /**
     * The growth the free side needs for a turn.
     *
     * @param angle 0 to below 90 degrees
     * @param width above 0
     * @throws IllegalArgumentException if angle or width is out of range
     */
    public static Length growthFor(Angle angle, Length width) {
        return new Length(positive(width) * Math.tan(acute(angle)));
    }

    /**
     * What the middle of the bone does not grow by while the joint turns so far: half the growth of the free side.
     *
     * @param angle 0 to below 90 degrees
     * @param width above 0
     * @throws IllegalArgumentException if angle or width is out of range
     */
    public static Length lengthLost(Angle angle, Length width) {
        return new Length(growthFor(angle, width).millimetres() / 2);
    }

    /**
     * What straightening a leg adds to the distance from hip to ankle.
     *
     * @param angle bend that is taken out, 0 to below 90 degrees
     * @param femur above 0
     * @param tibia above 0
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Length straighteningGain(Angle angle, Length femur, Length tibia) {
        double f = positive(femur);
        double t = positive(tibia);
        return new Length(f + t - Math.sqrt(f * f + t * t + 2 * f * t * Math.cos(acute(angle))));
    }

    /**
     * How far the line from hip to ankle moves at the knee for a degree there.
     *
     * @param femur above 0
     * @param tibia above 0
     * @throws IllegalArgumentException if a length is out of range
     */
    public static Length axisShiftPerDegree(Length femur, Length tibia) {
        double f = positive(femur);
        double t = positive(tibia);
        return new Length(Math.toRadians(f * t / (f + t)));
    }

    private static double acute(Angle angle) {
        if (!(angle.degrees() >= 0 && angle.degrees() < 90)) {
            throw new IllegalArgumentException("A turn from 0 to below 90 degrees is reckoned with, not " + angle);
        }
        return angle.toRadians();
    }

    private static double positive(Length length) {
        if (!(length.millimetres() > 0)) {
            throw new IllegalArgumentException("A length above 0 is wanted, not " + length);
        }
        return length.millimetres();
    }

    private static double notNegative(Length length) {
        if (!(length.millimetres() >= 0)) {
            throw new IllegalArgumentException("Growth is not negative as in " + length);
        }
        return length.millimetres();
    }
}
