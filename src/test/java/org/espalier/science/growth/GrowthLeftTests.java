package org.espalier.science.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Worked examples. Formulae are of Paley and others, J Bone Joint Surg Am 2000;82-A:1432; where no publication is named
 * the number follows from them by hand.
 */
class GrowthLeftTests {

    /** Lengths of the examples are given to 0.01 cm. */
    private static final double TENTH_MM = 0.1;

    /** Ages of the examples are given to 0.1 years. */
    private static final double HALF_TENTH_YEAR = 0.05;

    private static final Length READER = new Length(5.5);

    @Test
    void multipliesADifferenceSinceBirth() {
        assertThat(sinceBirth(Sex.MALE, 4, 30)).isCloseTo(60.0, within(TENTH_MM));
        assertThat(sinceBirth(Sex.FEMALE, 6, 20)).isCloseTo(30.2, within(TENTH_MM));
    }

    /** A teaching case: a boy of 10 with 4 cm will have over 5 cm (orthopaedic examination notes, read). */
    @Test
    void tellsTheTeachingCaseOfMoreThanFiveCentimetres() {
        assertThat(sinceBirth(Sex.MALE, 10, 40))
                .isCloseTo(52.4, within(TENTH_MM))
                .isGreaterThan(50);
    }

    private static double sinceBirth(Sex sex, int years, double difference) {
        return DifferenceAtMaturity.sinceBirth(sex, Age.ofYears(years), new Length(difference), READER)
                .difference()
                .millimetres();
    }

    @Test
    void goesOnInhibitingAnAcquiredDifference() {
        var earlier = new DifferenceAtMaturity.Legs(new Length(350), new Length(330));
        var now = new DifferenceAtMaturity.Legs(new Length(400), new Length(370));
        var expected = DifferenceAtMaturity.acquired(Sex.MALE, Age.ofYears(10), earlier, now, READER);
        assertThat(expected).isInstanceOfSatisfying(DifferenceAtMaturity.Expected.class, found -> {
            assertThat(found.difference().millimetres()).isCloseTo(54.8, within(TENTH_MM));
            // by hand: error 7.78; of the inhibition 7.78/50·√1.64 = 0.1992, times 124 mm to grow = 24.7
            assertThat(found.halfWidth95().millimetres()).isCloseTo(25.9, within(TENTH_MM));
        });
    }

    /**
     * A boy of 10 with an average femur of 36.29 cm and tibia of 28.53 cm: 47.23 and 37.29 cm when grown by the 1964
     * lengths, 1.31 times as long by the multiplier. Longer by 2 and 1 cm on one side from birth on: 2 · 47.23/36.29 +
     * 1 · 37.29/28.53 = 2.603 + 1.307 cm by the lengths, 3.93 cm by the multiplier.
     */
    @Test
    void reckonsLengthAndDifferenceAtMaturityByTwoWays() {
        Age ten = Age.ofYears(10);
        Length femur = Length.ofCentimetres(36.29);
        var byLengths = LengthAtMaturity.byLengths(LengthForAge.Bone.FEMUR, Sex.MALE, ten, femur)
                .orElseThrow();
        assertThat(byLengths.length().millimetres()).isCloseTo(472.3, within(TENTH_MM));
        assertThat(byLengths.growth().millimetres()).isCloseTo(109.4, within(TENTH_MM));
        assertThat(byLengths.low().millimetres()).isCloseTo(472.3 - 109.4 / 4, within(TENTH_MM));
        assertThat(byLengths.high().millimetres()).isCloseTo(472.3 + 109.4 / 4, within(TENTH_MM));
        assertThat(LengthAtMaturity.byMultiplier(Sex.MALE, ten, femur).length().millimetres())
                .isCloseTo(475.4, within(TENTH_MM));
        var longer = Length.ofCentimetres(38.29);
        assertThat(LengthAtMaturity.byLengths(LengthForAge.Bone.FEMUR, Sex.MALE, ten, longer)
                        .orElseThrow()
                        .growth())
                .as("a bone's percentile tells nothing of the growth that follows")
                .isEqualTo(byLengths.growth());

        var kept =
                keptByLengths(LengthForAge.Bone.FEMUR, ten, 20).plus(keptByLengths(LengthForAge.Bone.TIBIA, ten, 10));
        assertThat(kept.difference().millimetres()).isCloseTo(39.1, within(TENTH_MM));
        assertThat(kept.negated().difference().millimetres()).isCloseTo(-39.1, within(TENTH_MM));
        assertThat(sinceBirth(Sex.MALE, 10, 30)).isCloseTo(39.3, within(TENTH_MM));
        assertThat(DifferenceAtMaturity.sinceBirth(
                        LengthForAge.Bone.FEMUR, Sex.MALE, Age.ofMonths(11), new Length(20), READER))
                .isEmpty();
    }

    private static DifferenceAtMaturity.Expected keptByLengths(LengthForAge.Bone bone, Age age, double difference) {
        return DifferenceAtMaturity.sinceBirth(bone, Sex.MALE, age, new Length(difference), READER)
                .orElseThrow();
    }

    /** Worked example 4 with the 109.4 + 87.6 mm that both bones still grow on average: 30 + 0.2 · 197 mm. */
    @Test
    void goesOnInhibitingByWhateverGrowthIsReckonedWith() {
        var earlier = new DifferenceAtMaturity.Legs(new Length(350), new Length(330));
        var now = new DifferenceAtMaturity.Legs(new Length(400), new Length(370));
        assertThat(DifferenceAtMaturity.acquired(new Length(197), earlier, now, READER))
                .isInstanceOfSatisfying(
                        DifferenceAtMaturity.Expected.class,
                        found -> assertThat(found.difference().millimetres()).isCloseTo(69.4, within(TENTH_MM)));
    }

    @Test
    void asksForGrowthBetweenTheFilmsOfAnAcquiredDifference() {
        var earlier = new DifferenceAtMaturity.Legs(new Length(393), new Length(365));
        var now = new DifferenceAtMaturity.Legs(new Length(400), new Length(370));
        assertThat(DifferenceAtMaturity.acquired(Sex.MALE, Age.ofYears(10), earlier, now, READER))
                .isEqualTo(new DifferenceAtMaturity.Unknown(DifferenceAtMaturity.Reason.TOO_LITTLE_GROWTH_BETWEEN));
    }

    @Test
    void timesAnArrestAtTheDistalFemur() {
        GrowthCurve curve = GrowthCurve.byMultiplier(
                GrowthPlate.DISTAL_FEMUR, Sex.MALE, Age.ofYears(10), Length.ofCentimetres(36.29));
        assertThat(curve.yearsWhenLeft(Length.ofCentimetres(2)).orElseThrow()).isCloseTo(14.4, within(HALF_TENTH_YEAR));
        assertThat(LegMultiplier.atMaturity(Sex.MALE, Age.ofYears(10), Length.ofCentimetres(36.29))
                        .millimetres())
                .isCloseTo(475.4, within(TENTH_MM));
    }

    /** Legs of 92 and 87 cm at maturity, arrest when the longer is 84 cm (a printed straight-line example, read). */
    @Test
    void makesBothLegsEvenByAnArrestAboutTheKnee() {
        Length shortening = Arrest.shortening(
                Length.ofCentimetres(92 - 84), Set.of(GrowthPlate.DISTAL_FEMUR, GrowthPlate.PROXIMAL_TIBIA));
        assertThat(shortening.millimetres()).isCloseTo(52, within(TENTH_MM)).isCloseTo(50, within(2.5));
    }

    /**
     * A boy of 10 with a leg of 36.29 and 28.53 cm, by hand: 84.91 cm grown; 2 cm at the femur, 37 % of the leg, are
     * 5.41 cm of it, left at a multiplier of 84.91 / 79.51 = 1.068, between 1.08 at 14 and 1.06 at 14.5 years.
     */
    @Test
    void timesAnArrestThatTakesSoMuchOffALeg() {
        var leg = Length.ofCentimetres(36.29 + 28.53);
        var femur = Set.of(GrowthPlate.DISTAL_FEMUR);
        double years = Arrest.yearsFor(Sex.MALE, Age.ofYears(10), leg, new Length(20), femur)
                .orElseThrow();
        assertThat(years).isCloseTo(14.30, within(0.01));
        double grown = LegMultiplier.atMaturity(Sex.MALE, Age.ofYears(10), leg).millimetres();
        var left = new Length(grown * (1 - 1 / LegMultiplier.at(Sex.MALE, years)));
        assertThat(Arrest.shortening(left, femur).millimetres()).isCloseTo(20, within(1e-6));
        var both = Set.of(GrowthPlate.DISTAL_FEMUR, GrowthPlate.PROXIMAL_TIBIA);
        assertThat(Arrest.yearsFor(Sex.MALE, Age.ofYears(10), leg, new Length(20), both)
                        .orElseThrow())
                .isGreaterThan(years);
        assertThat(Arrest.yearsFor(Sex.MALE, Age.ofYears(10), leg, new Length(400), femur))
                .isEmpty();
    }

    @Test
    void timesAnAngleByAHeldSide() {
        Length needed = CorrectionGeometry.growthFor(Angle.ofDegrees(10), new Length(75));
        assertThat(needed.millimetres()).isCloseTo(13.2, within(0.05));
        GrowthCurve curve = GrowthCurve.byMultiplier(
                GrowthPlate.DISTAL_FEMUR, Sex.MALE, Age.ofYears(18), Length.ofCentimetres(47.23));
        assertThat(curve.yearsWhenLeft(needed).orElseThrow()).isCloseTo(15.0, within(HALF_TENTH_YEAR));
    }

    /** (14 − 11) · (9.5 + 6.4) mm, Menelaus, J Bone Joint Surg Br 1966;48:336; with 9 and 6 mm it would be 45. */
    @Test
    void addsTheYearsUntilFourteen() {
        double both = List.of(GrowthPlate.DISTAL_FEMUR, GrowthPlate.PROXIMAL_TIBIA).stream()
                .map(plate -> GrowthCurve.byYear(plate, Sex.FEMALE).orElseThrow())
                .mapToDouble(curve -> curve.left(Age.ofYears(11)).orElseThrow().millimetres())
                .sum();
        assertThat(both).isCloseTo(47.7, within(TENTH_MM));
    }

    @Test
    void findsBothMethodsAgreeingInAnAverageGirlOfTen() {
        Age ten = Age.ofYears(10);
        Length femur = Length.ofCentimetres(36.72);
        assertThat(LegMultiplier.atMaturity(Sex.FEMALE, ten, femur).minus(femur).millimetres())
                .isCloseTo(69.8, within(TENTH_MM));
        assertThat(left(GrowthCurve.byMultiplier(GrowthPlate.DISTAL_FEMUR, Sex.FEMALE, ten, femur), 10))
                .isCloseTo(49.5, within(TENTH_MM));
        assertThat(left(GrowthCurve.byLengths(GrowthPlate.DISTAL_FEMUR, Sex.FEMALE), 10))
                .isCloseTo(49.1, within(TENTH_MM));
    }

    /**
     * Legs below the seat of 15 cm at birth, 81 and 74.5 cm grown (Kelly and Dimeglio, J Child Orthop 2008;2:407,
     * read).
     */
    @Test
    void fallsShortFromBirthBySixAndSevenPerCent() {
        Length newborn = Length.ofCentimetres(15);
        double boys =
                LegMultiplier.atMaturity(Sex.MALE, Age.ofYears(0), newborn).millimetres();
        double girls =
                LegMultiplier.atMaturity(Sex.FEMALE, Age.ofYears(0), newborn).millimetres();
        assertThat(boys).isCloseTo(762, within(TENTH_MM));
        assertThat(boys / 810).isCloseTo(0.94, within(0.005));
        assertThat(girls).isCloseTo(694.5, within(TENTH_MM));
        assertThat(girls / 745).isCloseTo(0.93, within(0.005));
    }

    /** Two tables remembered apart guard each other: a slip of the pen in one shows. */
    @ParameterizedTest
    @EnumSource
    void agreesWithTheLengthsOf1964AtWholeYears(Sex sex) {
        List<PrintedTable.Row> rows = PrintedTable.of(LengthForAge.class, LengthForAge.TABLE).rows().stream()
                .filter(row -> row.text("sex").equals(sex.name()))
                .toList();
        PrintedTable.Row grown = rows.getLast();
        for (PrintedTable.Row row : rows) {
            double femur = grown.number("femur_mean") / row.number("femur_mean");
            double tibia = grown.number("tibia_mean") / row.number("tibia_mean");
            assertThat(LegMultiplier.at(sex, row.number("years")))
                    .as("at %s years", row.text("years"))
                    .isCloseTo((femur + tibia) / 2, within(sex == Sex.MALE ? 0.0155 : 0.0245));
        }
    }

    /**
     * Millimetres left by the 1964 lengths and constant shares, worked out by hand to 0.1 cm above a year, finer at the
     * end.
     */
    @ParameterizedTest
    @CsvSource({
        "MALE, 1, 233, 146",
        "MALE, 8, 106, 68",
        "MALE, 12, 51, 32",
        "MALE, 16, 4.0, 1.4",
        "FEMALE, 5, 123, 79",
        "FEMALE, 11, 34, 21",
        "FEMALE, 14, 3.5, 1.3"
    })
    void leavesWhatTheLengthsOf1964Leave(Sex sex, int years, double femur, double tibia) {
        double rounding = femur < 10 ? 0.06 : 0.6;
        assertThat(left(GrowthCurve.byLengths(GrowthPlate.DISTAL_FEMUR, sex), years))
                .isCloseTo(femur, within(rounding));
        assertThat(left(GrowthCurve.byLengths(GrowthPlate.PROXIMAL_TIBIA, sex), years))
                .isCloseTo(tibia, within(rounding));
    }

    @Test
    void sharesABoneBetweenItsTwoPlates() {
        assertThat(GrowthPlate.DISTAL_FEMUR.shareOfBone() + GrowthPlate.PROXIMAL_FEMUR.shareOfBone())
                .isCloseTo(1, within(1e-12));
        assertThat(GrowthPlate.PROXIMAL_TIBIA.shareOfBone() + GrowthPlate.DISTAL_TIBIA.shareOfBone())
                .isCloseTo(1, within(1e-12));
        double leg = 0;
        for (GrowthPlate plate : GrowthPlate.values()) {
            leg += plate.shareOfLeg();
        }
        assertThat(leg).isCloseTo(1, within(1e-12));
    }

    @Test
    void leavesNothingAfterTheEndAndIsSilentBeforeTheBeginning() {
        GrowthCurve lengths = GrowthCurve.byLengths(GrowthPlate.DISTAL_TIBIA, Sex.FEMALE);
        assertThat(lengths.left(Age.ofMonths(11))).isEmpty();
        assertThat(lengths.left(Age.ofYears(1))).isPresent();
        assertThat(left(lengths, 18)).isZero();
        assertThat(left(lengths, 40)).isZero();
        GrowthCurve yearly =
                GrowthCurve.byYear(GrowthPlate.DISTAL_FEMUR, Sex.FEMALE).orElseThrow();
        assertThat(yearly.left(Age.ofMonths(95))).isEmpty();
        assertThat(left(yearly, 8)).isCloseTo(57, within(1e-9));
        assertThat(left(yearly, 14)).isZero();
        assertThat(GrowthCurve.byYear(GrowthPlate.DISTAL_TIBIA, Sex.MALE)).isEmpty();
        assertThat(LegMultiplier.at(Sex.MALE, Age.ofYears(30))).isEqualTo(1);
    }

    @Test
    void turnsRoundOnlyWhatIsInTheTable() {
        GrowthCurve curve = GrowthCurve.byLengths(GrowthPlate.DISTAL_FEMUR, Sex.MALE);
        assertThat(curve.yearsWhenLeft(new Length(240))).isEmpty();
        assertThat(curve.yearsWhenLeft(new Length(-1))).isEmpty();
        assertThat(curve.yearsWhenLeft(new Length(0)).orElseThrow()).isCloseTo(18, within(1e-6));
        assertThat(LegMultiplier.yearsAt(Sex.FEMALE, 0.99)).isEmpty();
        assertThat(LegMultiplier.yearsAt(Sex.FEMALE, 5)).isEmpty();
        assertThat(LegMultiplier.yearsAt(Sex.FEMALE, 4.63).orElseThrow()).isZero();
        assertThat(LegMultiplier.yearsAt(Sex.FEMALE, 1).orElseThrow()).isCloseTo(14, within(1e-6));
        assertThat(LegMultiplier.yearsAt(Sex.MALE, 1.15).orElseThrow()).isCloseTo(12.5 + 1.0 / 6, within(1e-6));
    }

    @Test
    void refusesAnEmptyWidth() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CorrectionGeometry.angle(new Length(9), new Length(0)))
                .withMessageContaining("above 0");
    }

    private static double left(GrowthCurve curve, int years) {
        return curve.left(Age.ofYears(years)).orElseThrow().millimetres();
    }
}
