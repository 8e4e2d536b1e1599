package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.espalier.science.statistics.TwoByTwo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TibiaVaraCutoffTests {

    /** Levine and Drennan 1982, Feldman and Schoenecker 1993, Davids and others 2001: rates in percent from their counts. */
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
        assertPercent(cutoff.counts().sensitivity(), sensitivity);
        assertPercent(cutoff.counts().specificity(), specificity);
        assertPercent(cutoff.counts().positivePredictiveValue(), positive);
        assertPercent(cutoff.counts().negativePredictiveValue(), negative);
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
