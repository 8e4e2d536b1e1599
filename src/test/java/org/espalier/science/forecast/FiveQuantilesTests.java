package org.espalier.science.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.espalier.science.statistics.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FiveQuantilesTests {

    /** Mean 3, standard deviation 2. */
    private static final NormalDistribution NORMAL = new NormalDistribution(3, 2);

    private static final FiveQuantiles KEPT = FiveQuantiles.of(
            NORMAL.quantile(0.95),
            NORMAL.quantile(0.05),
            NORMAL.quantile(0.5),
            NORMAL.quantile(0.25),
            NORMAL.quantile(0.75));

    @ParameterizedTest
    @ValueSource(doubles = {-5, 0, 1.2, 3, 4.4, 6.2, 9})
    void meetsANormalDistributionInTheMiddleAndBeyondItsEnds(double value) {
        assertThat(KEPT.place(value)).isEqualTo(NORMAL.below(value), within(1e-9));
        assertThat(KEPT.quantile(NORMAL.below(value))).isEqualTo(value, within(1e-6));
    }

    @Test
    void saysWhatLiesInside() {
        assertThat(KEPT.holdsIn50(4)).isTrue();
        assertThat(KEPT.holdsIn50(4.5)).isFalse();
        assertThat(KEPT.holdsIn90(4.5)).isTrue();
        assertThat(KEPT.holdsIn90(6.4)).isFalse();
        assertThat(KEPT.holdsIn90(KEPT.high90())).isTrue();
    }

    @Test
    void goesAPartOfTheWayToALaterOne() {
        var later = new FiveQuantiles(-2, 0, 2, 4, 6);
        assertThat(new FiveQuantiles(0, 1, 2, 3, 4).towards(later, 0.5))
                .isEqualTo(new FiveQuantiles(-1, 0.5, 2, 3.5, 5));
        assertThat(KEPT.towards(later, 0)).isEqualTo(KEPT);
    }

    /** The score of a normal forecast at its middle is σ (√2 − 1) / √π. */
    @Test
    void isScoredAsTheNormalDistributionIs() {
        double score = ForecastScore.ranked(KEPT.equallyLikely(999), 3);
        assertThat(score).isEqualTo(2 * (Math.sqrt(2) - 1) / Math.sqrt(Math.PI), within(0.005));
        assertThat(Arrays.stream(KEPT.equallyLikely(99)).average().orElseThrow())
                .isEqualTo(3, within(1e-9));
    }

    @Test
    void refusesWhatDoesNotAscend() {
        assertThatIllegalArgumentException().isThrownBy(() -> new FiveQuantiles(0, 1, 1, 2, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new FiveQuantiles(0, 1, Double.NaN, 2, 3));
    }
}
