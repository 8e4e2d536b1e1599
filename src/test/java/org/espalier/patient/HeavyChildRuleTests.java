package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Weight;
import org.junit.jupiter.api.Test;

/** "Over the 95th BMI centile from 10 years ask a bone age not older than 6 months before a window is shown." */
class HeavyChildRuleTests {

    private static final LocalDate BORN = LocalDate.of(2014, 5, 6);
    private static final LocalDate TEN = BORN.plusYears(10);
    private static final HeavyChildRule RULE = new HeavyChildRule(BORN, Sex.MALE);
    private static final double HEAVY_KG = 60;
    private static final double LIGHT_KG = 32;

    @Test
    void asksForABoneAgeFromTheTenthBirthdayOn() {
        var size = size(TEN.minusDays(1), HEAVY_KG);
        assertThat(RULE.boneAgeNeed(history(size), history(), TEN.minusDays(1))).isEmpty();
        assertThat(RULE.boneAgeNeed(history(size), history(), TEN)).contains(BoneAgeNeed.MISSING);
    }

    @Test
    void asksNothingOfAChildThatIsNotHeavy() {
        assertThat(RULE.boneAgeNeed(history(size(TEN, LIGHT_KG)), history(), TEN))
                .isEmpty();
    }

    @Test
    void takesABoneAgeOfSixMonthsAndNotOfADayMore() {
        var sizes = history(size(TEN, HEAVY_KG));
        var fresh = new BoneAge(TEN, Age.ofYears(12), BoneAgeMethod.HAND_ATLAS);
        assertThat(RULE.boneAgeNeed(sizes, history(fresh), TEN.plusMonths(6))).isEmpty();
        assertThat(RULE.boneAgeNeed(sizes, history(fresh), TEN.plusMonths(6).plusDays(1)))
                .contains(BoneAgeNeed.OLD);
    }

    @Test
    void saysWhenNobodyWeighedTheChildForAYear() {
        var sizes = history(size(TEN, LIGHT_KG));
        assertThat(RULE.boneAgeNeed(history(), history(), TEN)).contains(BoneAgeNeed.SIZE_UNKNOWN);
        assertThat(RULE.boneAgeNeed(sizes, history(), TEN.plusMonths(12))).isEmpty();
        assertThat(RULE.boneAgeNeed(sizes, history(), TEN.plusMonths(12).plusDays(1)))
                .contains(BoneAgeNeed.SIZE_UNKNOWN);
    }

    @Test
    void countsTheLatestSizeThatTells() {
        var heightAlone = new BodySize(TEN.plusDays(20), Length.ofCentimetres(141), null);
        var sizes = history(size(TEN, LIGHT_KG), size(TEN.plusDays(10), HEAVY_KG), heightAlone);
        assertThat(RULE.boneAgeNeed(sizes, history(), TEN.plusDays(30))).contains(BoneAgeNeed.MISSING);
    }

    @Test
    void asksAboutSleepInHeavyChildrenFromNineYearsOn() {
        var nine = BORN.plusYears(9);
        assertThat(RULE.asksForSleep(size(nine, HEAVY_KG))).isTrue();
        assertThat(RULE.asksForSleep(size(nine.minusDays(1), HEAVY_KG))).isFalse();
        assertThat(RULE.asksForSleep(size(nine, LIGHT_KG))).isFalse();
    }

    /** 95th centile of boys at 120.5 months, 2000 CDC Growth Charts: 22.15 kg/m² (from memory, to a tenth). */
    @Test
    void setsTheBorderAtThe95thCentile() {
        double square = 1.4 * 1.4;
        assertThat(RULE.isHeavy(size(TEN, 22.0 * square))).contains(false);
        assertThat(RULE.isHeavy(size(TEN, 22.3 * square))).contains(true);
    }

    @Test
    void countsAChildOfUnknownSexAsHeavyByEitherTable() {
        var unknown = new HeavyChildRule(BORN, null);
        var size = size(TEN, 22.5 * 1.4 * 1.4);
        assertThat(RULE.isHeavy(size)).contains(true);
        assertThat(new HeavyChildRule(BORN, Sex.FEMALE).isHeavy(size)).contains(false);
        assertThat(unknown.isHeavy(size)).contains(true);
    }

    private static BodySize size(LocalDate on, double kilograms) {
        return new BodySize(on, Length.ofCentimetres(140), Weight.ofKilograms(kilograms));
    }

    @SafeVarargs
    private static <F extends Finding> History<F> history(F... findings) {
        return new History<>(List.of(findings).stream()
                .map(finding -> new Fact<>(
                        new FactId(UUID.randomUUID()), finding.on(), finding, "Test", Instant.EPOCH, null, null))
                .toList());
    }
}
