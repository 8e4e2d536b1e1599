package org.espalier.science.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.Test;

class PlateWindowTests {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);
    private static final Standing HEAVY = new Standing(2);
    private static final Standing MIDDLE = new Standing(0);

    @Test
    void reckonsTheYoungByBirthAndTheOlderByBoneAge() {
        var ahead = Optional.of(new SkeletalAge(DAY.minusMonths(6), Age.ofYears(12)));
        GrowthAge girl = age(Sex.FEMALE, 8, ahead, Optional.empty());
        assertThat(girl.basis()).isEqualTo(GrowthAge.Basis.BONE_AGE);
        assertThat(girl.age().decimalYears()).isCloseTo(12.5, within(0.01));
        assertThat(age(Sex.MALE, 9, ahead, Optional.empty()).basis()).isEqualTo(GrowthAge.Basis.BIRTH);
        assertThat(age(Sex.MALE, 10, ahead, Optional.empty()).basis()).isEqualTo(GrowthAge.Basis.BONE_AGE);
    }

    @Test
    void doesNotTrustABoneAgeOlderThanAYear() {
        var justInTime = Optional.of(new SkeletalAge(DAY.minusMonths(12), Age.ofYears(10)));
        var tooOld = Optional.of(new SkeletalAge(DAY.minusMonths(12).minusDays(1), Age.ofYears(10)));
        assertThat(age(Sex.FEMALE, 11, justInTime, Optional.empty()).basis()).isEqualTo(GrowthAge.Basis.BONE_AGE);
        assertThat(age(Sex.FEMALE, 11, tooOld, Optional.empty()).basis()).isEqualTo(GrowthAge.Basis.BIRTH);
    }

    @Test
    void asksHeavyChildrenFromTenForANewBoneAgeAndTakesTheEarlierDate() {
        var ahead = Optional.of(new SkeletalAge(DAY.minusMonths(6), Age.ofYears(13)));
        var behind = Optional.of(new SkeletalAge(DAY.minusMonths(1), Age.ofYears(8)));
        var old = Optional.of(new SkeletalAge(DAY.minusMonths(6).minusDays(1), Age.ofYears(13)));
        GrowthAge heavy = age(Sex.MALE, 11, ahead, Optional.of(HEAVY));
        assertThat(heavy.isBoneAgeWanted()).isFalse();
        assertThat(heavy.age().decimalYears()).isCloseTo(13.5, within(0.01));
        assertThat(age(Sex.MALE, 11, behind, Optional.of(HEAVY)).age()).isEqualTo(Age.ofYears(11));
        assertThat(age(Sex.MALE, 11, old, Optional.of(HEAVY)).isBoneAgeWanted()).isTrue();
        assertThat(age(Sex.MALE, 9, Optional.empty(), Optional.of(HEAVY)).isBoneAgeWanted())
                .isFalse();
        assertThat(age(Sex.MALE, 11, Optional.empty(), Optional.of(MIDDLE)).isBoneAgeWanted())
                .isFalse();
        assertThat(Maturity.of(heavy).day())
                .isBefore(Maturity.of(age(Sex.MALE, 11, Optional.empty(), Optional.empty()))
                        .day());
    }

    @Test
    void endsGrowthWithASpread() {
        Maturity girls = Maturity.of(age(Sex.FEMALE, 11, Optional.empty(), Optional.empty()));
        assertThat(girls.day()).isEqualTo(DAY.plusDays(Math.round(3 * 365.25)));
        assertThat(ChronoUnit.DAYS.between(girls.earliest(), girls.day())).isEqualTo(601);
        assertThat(ChronoUnit.DAYS.between(girls.day(), girls.latest())).isEqualTo(601);
        var bone = Optional.of(new SkeletalAge(DAY, Age.ofYears(14)));
        Maturity boys = Maturity.of(age(Sex.MALE, 14, bone, Optional.empty()));
        assertThat(boys.sdYears()).isEqualTo(0.6);
        assertThat(boys.day()).isEqualTo(DAY.plusDays(Math.round(2 * 365.25)));
    }

    /**
     * A girl of 11, 8 degrees left, plate 66 mm wide: needed 66·tan 8° = 9.28 mm of full growth, 11.6 mm at 0.8. The
     * 1964 lengths leave 20.5 mm at 12 and 9.4 at 13, so 11.6 mm at 12.80 years.
     */
    @Test
    void findsTheLastDayByHand() {
        GrowthAge eleven = age(Sex.FEMALE, 11, Optional.empty(), Optional.empty());
        PlateWindow.Dates dates = dates(eleven, 8);
        assertThat(years(eleven, dates.evenly())).isCloseTo(12.80, within(0.02));
        assertThat(PlateWindow.SHORTFALL).isCloseTo(0.3125, within(1e-3));
        // 16.9 mm: between 20.5 at 12 and 9.4 at 13
        assertThat(years(eleven, dates.by())).isCloseTo(12.33, within(0.02));
        // 11.6 and 20.5 mm left at 12: 32.1 mm, between 34.2 at 11 and 20.5 at 12
        assertThat(years(eleven, dates.notBefore().orElseThrow())).isCloseTo(11.15, within(0.02));
        assertThat(dates.decidedBy()).isEqualTo(GrowthMethod.LENGTHS_BY_AGE);
        assertThat(dates.isOpen(dates.by())).isTrue();
        assertThat(dates.isOpen(dates.by().plusDays(1))).isFalse();
        assertThat(dates.isClosed(dates.evenly())).isFalse();
        assertThat(dates.isClosed(dates.evenly().plusDays(1))).isTrue();
    }

    @Test
    void closesEarlierForMoreDegreesAndWarnsOfNothingTooEarlyForMany() {
        GrowthAge eleven = age(Sex.FEMALE, 11, Optional.empty(), Optional.empty());
        assertThat(dates(eleven, 12).by()).isBefore(dates(eleven, 8).by());
        assertThat(dates(eleven, 30).notBefore()).isEmpty();
    }

    @Test
    void takesTheEarlierOfTwoWaysToReckon() {
        GrowthAge twelve = age(Sex.MALE, 12, Optional.empty(), Optional.empty());
        GrowthCurve lengths = GrowthCurve.byLengths(GrowthPlate.DISTAL_FEMUR, Sex.MALE);
        GrowthCurve shortFemur =
                GrowthCurve.byMultiplier(GrowthPlate.DISTAL_FEMUR, Sex.MALE, Age.ofYears(12), Length.ofCentimetres(33));
        var width = PhysisWidth.assumed(GrowthPlate.DISTAL_FEMUR, Sex.MALE, Age.ofYears(12));
        var both = (PlateWindow.Dates) PlateWindow.of(twelve, List.of(lengths, shortFemur), width, Angle.ofDegrees(6));
        assertThat(both.decidedBy()).isEqualTo(GrowthMethod.MULTIPLIER);
        assertThat(both.isWidthAssumed()).isTrue();
        var alone = (PlateWindow.Dates) PlateWindow.of(twelve, List.of(lengths), width, Angle.ofDegrees(6));
        assertThat(both.by()).isBefore(alone.by());
    }

    @Test
    void saysWhyThereAreNoDates() {
        GrowthAge eleven = age(Sex.FEMALE, 11, Optional.empty(), Optional.empty());
        GrowthAge heavy = age(Sex.FEMALE, 11, Optional.empty(), Optional.of(HEAVY));
        List<GrowthCurve> curves = List.of(GrowthCurve.byLengths(GrowthPlate.DISTAL_FEMUR, Sex.FEMALE));
        var width = Optional.of(PhysisWidth.measured(new Length(66)));
        assertThat(reason(PlateWindow.of(eleven, curves, width, Angle.ZERO))).isEqualTo(PlateWindow.Reason.AT_TARGET);
        assertThat(reason(PlateWindow.of(heavy, curves, width, Angle.ofDegrees(5))))
                .isEqualTo(PlateWindow.Reason.BONE_AGE_WANTED);
        assertThat(reason(PlateWindow.of(eleven, curves, Optional.empty(), Angle.ofDegrees(5))))
                .isEqualTo(PlateWindow.Reason.WIDTH_UNKNOWN);
        assertThat(reason(PlateWindow.of(eleven, curves, width, Angle.ofDegrees(80))))
                .isEqualTo(PlateWindow.Reason.MORE_THAN_GROWTH_GIVES);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlateWindow.of(eleven, List.of(), width, Angle.ofDegrees(5)));
    }

    private static PlateWindow.Reason reason(PlateWindow window) {
        return ((PlateWindow.None) window).reason();
    }

    private static PlateWindow.Dates dates(GrowthAge age, double degrees) {
        List<GrowthCurve> curves = List.of(GrowthCurve.byLengths(GrowthPlate.DISTAL_FEMUR, age.sex()));
        return (PlateWindow.Dates) PlateWindow.of(
                age, curves, Optional.of(PhysisWidth.measured(new Length(66))), Angle.ofDegrees(degrees));
    }

    private static GrowthAge age(Sex sex, int years, Optional<SkeletalAge> bone, Optional<Standing> size) {
        return GrowthAge.of(sex, DAY.minusYears(years), DAY, bone, size);
    }

    private static double years(GrowthAge age, LocalDate day) {
        return age.age().decimalYears() + ChronoUnit.DAYS.between(age.day(), day) / 365.25;
    }
}
