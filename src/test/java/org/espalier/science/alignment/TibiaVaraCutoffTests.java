package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Optional;
import org.espalier.science.quantity.Age;
import org.espalier.science.statistics.TwoByTwo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TibiaVaraCutoffTests {

    /**
     * Levine and Drennan 1982, Feldman and Schoenecker 1993, Davids and others 2001: rates in percent from their
     * counts.
     */
    @ParameterizedTest
    @CsvSource({
        "0, Levine, 90.6, 98.2, 96.7, 94.8",
        "1, Feldman, 96.9, 63.1, 32.0, 99.1",
        "2, Davids, 100, 80, 56.5, 100"
    })
    void tellsHowOftenAPublishedRuleWasRight(
            int row, String author, double sensitivity, double specificity, double positive, double negative) {
        PublishedCutoff cutoff = PublishedCutoff.all().get(row);
        assertThat(cutoff.source()).startsWith(author);
        assertThat(cutoff.checking().isUnverified()).isFalse();
        TwoByTwo counts = cutoff.counts().orElseThrow();
        assertPercent(counts.sensitivity(), sensitivity);
        assertPercent(counts.specificity(), specificity);
        assertPercent(counts.positivePredictiveValue(), positive);
        assertPercent(counts.negativePredictiveValue(), negative);
    }

    private static void assertPercent(double part, double percent) {
        assertThat(100 * part).isCloseTo(percent, within(0.0501));
    }

    /** Normal curves of Feldman and Schoenecker 1993. */
    @Test
    void tellsHowFarTheCurvesOfBothGroupsOverlap() {
        assertPercent(MetaphysealAngleGroups.PHYSIOLOGICAL.above(16), 3.6);
        assertPercent(MetaphysealAngleGroups.PHYSIOLOGICAL.above(11), 30.4);
        assertPercent(MetaphysealAngleGroups.TIBIA_VARA.below(9), 4.0);
        assertPercent(MetaphysealAngleGroups.TIBIA_VARA.below(11), 8.0);
        assertPercent(MetaphysealAngleGroups.PHYSIOLOGICAL.above(13), 15.3);
        assertPercent(MetaphysealAngleGroups.TIBIA_VARA.below(13), 14.6);
    }

    /** McCarthy and others 2001: 23 and 10 % missed, 10 and 7 % false alarms; Davids and others 2001: 10 of 50. */
    @Test
    void tellsHowMuchLikelierAnAnswerIsInTibiaVara() {
        var angle = PublishedCutoff.all().get(3);
        var ratio = PublishedCutoff.all().get(4);
        assertThat(angle.likelihoodRatio(true)).hasValueCloseTo(7.7, within(0.001));
        assertThat(angle.likelihoodRatio(false)).hasValueCloseTo(0.2556, within(0.001));
        assertThat(ratio.likelihoodRatio(true)).hasValueCloseTo(12.857, within(0.001));
        assertThat(ratio.likelihoodRatio(false)).hasValueCloseTo(0.1075, within(0.001));
        assertThat(PublishedCutoff.all().get(2).likelihoodRatio(true)).hasValueCloseTo(5.0, within(1e-9));
        assertThat(PublishedCutoff.all().get(5).likelihoodRatio(true)).isEmpty();
        assertThat(PublishedCutoff.all().get(6).sensitivity()).isEmpty();
    }

    /** By hand: both curves are as high where 19 and 9 lie as far off for their width, and 12 lies nearer 9. */
    @Test
    void tellsHowMuchLikelierAnAngleIsInTibiaVara() {
        assertThat(MetaphysealAngleGroups.likelihoodRatio(9)).isCloseTo(0.147, within(0.001));
        assertThat(MetaphysealAngleGroups.likelihoodRatio(12)).isCloseTo(0.433, within(0.001));
        assertThat(MetaphysealAngleGroups.likelihoodRatio(16)).isCloseTo(2.982, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 11, , , false",
        "0, 11.1, , , true",
        "1, 11, , , true",
        "2, 10, 21, , true",
        "2, 9, 21, , false",
        "2, 10, 20, , false",
        "2, , 21, , ",
        "2, 9, , , false",
        "2, 10, , , ",
        "4, , , 0.99, true",
        "4, , , 1, false",
        "6, 16, , 51, true",
        "6, 15.9, , 51, false",
        "6, 16, , 50, false"
    })
    void callsALimbByEachRule(int row, Double mda, Double ema, Double other, Boolean called) {
        var rule = PublishedCutoff.all().get(row);
        var measured = new EnumMap<TibialIndex, Double>(TibialIndex.class);
        if (mda != null) {
            measured.put(TibialIndex.MDA, mda);
        }
        if (ema != null) {
            measured.put(TibialIndex.EMA, ema);
        }
        if (other != null) {
            measured.put(rule.first().index(), other);
        }
        assertThat(rule.calls(measured)).isEqualTo(Optional.ofNullable(called));
        assertThat(rule.indices()).contains(rule.first().index());
    }

    @Test
    void knowsForWhichAgesARuleWasMade() {
        var davids = PublishedCutoff.all().get(2);
        assertThat(davids.isFor(Age.ofMonths(11))).isFalse();
        assertThat(davids.isFor(Age.ofMonths(12))).isTrue();
        assertThat(davids.isFor(Age.ofMonths(36))).isFalse();
        assertThat(PublishedCutoff.all().getFirst().isFor(Age.ofYears(9))).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"9, BELOW_GREY", "9.1, GREY", "15.9, GREY", "16, ABOVE_GREY"})
    void namesTheGreyZone(double degrees, MetaphysealAngleGroups.Zone zone) {
        assertThat(MetaphysealAngleGroups.zone(degrees)).isEqualTo(zone);
    }

    @Test
    void needsBothKindsOfLimbsAndBothAnswers() {
        assertThatIllegalArgumentException().isThrownBy(() -> new TwoByTwo(0, 1, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new TwoByTwo(0, 0, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new TwoByTwo(-1, 1, 1, 1));
    }
}
