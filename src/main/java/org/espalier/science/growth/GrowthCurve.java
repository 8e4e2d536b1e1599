package org.espalier.science.growth;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;

/**
 * What one growth plate still adds to its bone, by age.
 *
 * <pre>
 * lengths by age   share · (mean length at 18 − mean length at the age)
 * multiplier       share · (M − 1) · length,   and at another age   share · L · (1 − 1/M),  L = length at maturity
 * yearly           millimetres a year · years until growth ends
 * </pre>
 *
 * <p>Error: a quarter either way ({@link #MODEL_ERROR}, judged), as published sources differ so much among themselves.
 * A bone's own percentile does not enter the first: it told nothing of the growth that followed (441 segments, J Bone
 * Joint Surg Am 2021).
 */
public final class GrowthCurve {

    /** By how much of itself every figure of growth may be wrong either way. */
    public static final double MODEL_ERROR = 0.25;

    private static final BySex<AgeTable> FEMUR = lengths(LengthForAge.Bone.FEMUR);
    private static final BySex<AgeTable> TIBIA = lengths(LengthForAge.Bone.TIBIA);
    private static final PrintedTable YEARLY = PrintedTable.of(GrowthCurve.class, "yearly-growth.csv");

    private final GrowthMethod method;
    private final DoubleUnaryOperator left;
    private final double from;
    private final double to;

    private GrowthCurve(GrowthMethod method, DoubleUnaryOperator left, double from, double to) {
        this.method = method;
        this.left = left;
        this.from = from;
        this.to = to;
    }

    /** By the 1964 lengths, from 1 to 18 years. */
    public static GrowthCurve byLengths(GrowthPlate plate, Sex sex) {
        AgeTable lengths = (plate.bone() == LengthForAge.Bone.FEMUR ? FEMUR : TIBIA).get(sex);
        double share = plate.shareOfBone();
        return new GrowthCurve(
                GrowthMethod.LENGTHS_BY_AGE,
                years -> share * (lengths.last() - lengths.at(years)),
                lengths.from(),
                lengths.to());
    }

    /**
     * By the multiplier of the bone's own length, from birth to 18 years.
     *
     * @param age when the length was measured
     * @param length of the bone
     */
    public static GrowthCurve byMultiplier(GrowthPlate plate, Sex sex, Age age, Length length) {
        double mature = LegMultiplier.atMaturity(sex, age, length).millimetres();
        double share = plate.shareOfBone();
        return new GrowthCurve(
                GrowthMethod.MULTIPLIER,
                years -> share * mature * (1 - 1 / LegMultiplier.at(sex, years)),
                0,
                LengthForAge.GROWN);
    }

    /** By the yearly rule, in the last six years of growth; empty for plates away from the knee. */
    public static Optional<GrowthCurve> byYear(GrowthPlate plate, Sex sex) {
        if (plate != GrowthPlate.DISTAL_FEMUR && plate != GrowthPlate.PROXIMAL_TIBIA) {
            return Optional.empty();
        }
        PrintedTable.Row row = YEARLY.rows().stream()
                .filter(each -> each.text("sex").equals(sex.name()))
                .findFirst()
                .orElseThrow();
        String column = plate == GrowthPlate.DISTAL_FEMUR ? "distal_femur" : "proximal_tibia";
        double ends = row.number("ends");
        double yearly = row.number(column);
        return Optional.of(new GrowthCurve(GrowthMethod.YEARLY, years -> yearly * (ends - years), ends - 6, ends));
    }

    /** How it is reckoned. */
    public GrowthMethod method() {
        return method;
    }

    /**
     * Growth left at an age; none after the end.
     *
     * @param age by the count the curve is used with
     * @return at least 0; empty at an age younger than the method reaches
     */
    public Optional<Length> left(Age age) {
        double years = age.decimalYears();
        return years < from ? Optional.empty() : Optional.of(new Length(leftAtYears(years)));
    }

    /** The youngest age that the method reaches, in years. */
    double youngest() {
        return from;
    }

    /** Growth left in mm, that of the ends beyond them. */
    double leftAtYears(double years) {
        return left.applyAsDouble(Math.clamp(years, from, to));
    }

    /**
     * The age at which no more than this is left.
     *
     * @param length above 0
     * @return in years; empty where more is wanted than was left at the youngest age, or less than nothing
     */
    public OptionalDouble yearsWhenLeft(Length length) {
        return Falling.firstAtOrBelow(left, from, to, length.millimetres());
    }

    private static BySex<AgeTable> lengths(LengthForAge.Bone bone) {
        return BySex.of(sex -> AgeTable.of(LengthForAge.TABLE, sex, row -> 10 * row.number(bone.column())));
    }
}
