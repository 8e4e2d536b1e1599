package org.espalier.science.growth;

import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;

/**
 * How fast a knee turns while one side of its growth plate is held entirely: the growth of a year over the width.
 *
 * <p>Growth by the 1964 lengths ({@link GrowthCurve#byLengths}), width as assumed for the age
 * ({@link PhysisWidth#assumed}). Error: that of both, a quarter either way; a plate brings about a part of it, which is
 * learnt from films.
 */
public final class FullTether {

    private static final double HALF_A_YEAR = 0.5;
    private static final double MONTHS = 12;

    private final GrowthPlate plate;
    private final Sex sex;
    private final GrowthCurve curve;

    private FullTether(GrowthPlate plate, Sex sex) {
        this.plate = plate;
        this.sex = sex;
        curve = GrowthCurve.byLengths(plate, sex);
    }

    /** Of a growth plate of the knee. */
    public static FullTether of(GrowthPlate plate, Sex sex) {
        return new FullTether(plate, sex);
    }

    /**
     * The turn in a month.
     *
     * @param years age, at least 0
     * @return in degrees; 0 once growth has ended
     */
    public double degreesAMonth(double years) {
        double from = Math.max(curve.youngest(), years - HALF_A_YEAR);
        double to = Math.max(curve.youngest(), years) + HALF_A_YEAR;
        double yearly = (curve.leftAtYears(from) - curve.leftAtYears(to)) / (to - from);
        double width = PhysisWidth.assumed(plate, sex, Age.ofDecimalYears(years))
                .orElseThrow(() -> new IllegalArgumentException("No width is known of " + plate))
                .length()
                .millimetres();
        return Math.toDegrees(Math.atan2(yearly, width)) / MONTHS;
    }
}
