package org.espalier.science.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTests {

    private static void assertInterval(Interval interval, double low, double high) {
        assertThat(interval.low()).isCloseTo(low, within(0.00006));
        assertThat(interval.high()).isCloseTo(high, within(0.00006));
    }

    /**
     * The first four are the examples of Newcombe, Stat Med 1998;17:857: the counts 81 of 263 and 15 of 148 read in a
     * citation, the rest of his table from memory and worked out again; the last two worked out again. To the printed
     * digit.
     */
    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource({
        "81, 263, 0.2553, 0.3662, 0.2527, 0.3676",
        "15, 148, 0.0624, 0.1605, 0.0578, 0.1617",
        "0, 20, 0, 0.1611, 0, 0.1684",
        "1, 29, 0.0061, 0.1718, 0.0009, 0.1776",
        "23, 60, 0.2709, 0.5098, 0.2607, 0.5179",
        "3, 10, 0.1078, 0.6032, 0.0667, 0.6525"
    })
    void givesPublishedIntervals(
            int count, int of, double wilsonLow, double wilsonHigh, double exactLow, double exactHigh) {
        assertInterval(new Proportion(count, of).wilson(), wilsonLow, wilsonHigh);
        assertInterval(new Proportion(count, of).exact(), exactLow, exactHigh);
    }

    /** Broken screws of a published series of plates, 30 of 246; Wilson's limits worked out outside this program. */
    @Test
    void givesWilsonsIntervalOfBrokenScrews() {
        assertInterval(new Proportion(30, 246).wilson(), 0.0868, 0.1688);
        assertThat(new Proportion(0, 58).wilson().high()).isCloseTo(0.0621, within(0.00006));
    }

    /** By definition: at either exact limit this count or one further out has a chance of 0.025. */
    @Test
    void leavesTwoAndAHalfPercentBeyondEachExactLimit() {
        var limits = new Proportion(7, 19).exact();
        assertThat(1 - new BinomialDistribution(19, limits.low()).cumulativeProbability(6))
                .isCloseTo(0.025, within(1e-8));
        assertThat(new BinomialDistribution(19, limits.high()).cumulativeProbability(7))
                .isCloseTo(0.025, within(1e-8));
    }

    @Test
    void turnsRoundWithWhatIsCounted() {
        for (int count = 0; count <= 11; count++) {
            var these = new Proportion(count, 11);
            var others = new Proportion(11 - count, 11);
            assertThat(these.wilson().low()).isCloseTo(1 - others.wilson().high(), within(1e-12));
            assertThat(these.exact().high()).isCloseTo(1 - others.exact().low(), within(1e-8));
            assertThat(these.wilson().contains(these.share())).isTrue();
            assertThat(these.exact().contains(these.share())).isTrue();
        }
    }

    @Test
    void reachesTheEndsWhereNoneOrAllCame() {
        assertThat(new Proportion(0, 1).wilson().low()).isZero();
        assertThat(new Proportion(0, 1).exact())
                .isEqualTo(new Interval(0, new Proportion(0, 1).exact().high()));
        assertThat(new Proportion(1, 1).wilson().high()).isEqualTo(1);
        assertThat(new Proportion(1, 1).exact().high()).isEqualTo(1);
        assertThat(new Proportion(1, 1).exact().low()).isCloseTo(0.025, within(1e-8));
    }

    @Test
    void refusesCountsThatAreNoShare() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Proportion(0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Proportion(-1, 5));
        assertThatIllegalArgumentException().isThrownBy(() -> new Proportion(6, 5));
    }
}
