package org.espalier.science.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Values worked out outside this program with the formulas of Spiegelhalter, Stat Med 2005;24:1185 (abstract read,
 * formulas from memory), to the last digit.
 */
class FunnelTests {

    private static final List<Proportion> GROUPS = List.of(
            new Proportion(4, 40),
            new Proportion(9, 60),
            new Proportion(3, 50),
            new Proportion(12, 55),
            new Proportion(6, 80),
            new Proportion(2, 30),
            new Proportion(10, 45),
            new Proportion(5, 70));

    private final Funnel funnel = Funnel.of(GROUPS).orElseThrow();

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({
        "0.10, 20, 0, 0.2285, 0, 0.3352",
        "0.10, 50, 0.0139, 0.1797, 0, 0.2401",
        "0.10, 100, 0.0404, 0.1577, 0.0142, 0.1984",
        "0.05, 200, 0.0196, 0.0797, 0.0065, 0.1012",
        "0.20, 40, 0.0708, 0.3191, 0.0163, 0.3999"
    })
    void drawsExactLimits(
            double target, int of, double warningLow, double warningHigh, double alarmLow, double alarmHigh) {
        var limits = new Funnel(target);
        assertInterval(limits.limits(of, Funnel.WARNING), warningLow, warningHigh);
        assertInterval(limits.limits(of, Funnel.ALARM), alarmLow, alarmHigh);
    }

    private static void assertInterval(Interval interval, double low, double high) {
        assertThat(interval.low()).isCloseTo(low, within(0.00006));
        assertThat(interval.high()).isCloseTo(high, within(0.00006));
    }

    /** r = 9, α = 0.013864 for 50 and r = 16, α = 0.228139 for 100, both at 0.975. */
    @Test
    void drawsStraightBetweenCounts() {
        var limits = new Funnel(0.1);
        assertThat(50 * limits.limits(50, Funnel.WARNING).high()).isCloseTo(9 - 0.013864, within(1e-6));
        assertThat(100 * limits.limits(100, Funnel.WARNING).high()).isCloseTo(16 - 0.228139, within(1e-6));
    }

    /** By definition: up to the upper limit, its count counted in part, lies a chance of exactly 0.975. */
    @Test
    void leavesTheSameChanceAboveForEverySize() {
        for (int of = 5; of <= 60; of++) {
            var chance = new BinomialDistribution(of, 0.15);
            double limit = of * new Funnel(0.15).limits(of, Funnel.WARNING).high();
            int count = (int) Math.ceil(limit);
            assertThat(chance.cumulativeProbability(count) - (count - limit) * chance.probability(count))
                    .isCloseTo(0.975, within(1e-9));
        }
    }

    /** Of the eight groups. */
    @Test
    void tellsHowFarEachGroupStandsFromAllTogether() {
        assertThat(funnel.target()).isCloseTo(0.11860, within(0.000006));
        double[] printed = {-0.3639, 0.7522, -1.2817, 2.2840, -1.2063, -0.8799, 2.1498, -1.2208};
        for (int i = 0; i < printed.length; i++) {
            assertThat(funnel.standing(GROUPS.get(i))).isCloseTo(printed[i], within(0.00006));
        }
    }

    @Test
    void tellsHowMuchMoreGroupsDifferThanByChance() {
        var spread = OverDispersion.of(funnel, GROUPS).orElseThrow();
        assertThat(spread.groups()).isEqualTo(8);
        assertThat(spread.phi()).isCloseTo(1.9874, within(0.00006));
        assertThat(spread.winsorisedPhi()).isCloseTo(1.9214, within(0.00006));
        assertThat(spread.tauSquared()).isCloseTo(0.002501, within(6e-7));
        assertThat(spread.isUncertain()).isTrue();
    }

    @Test
    void findsNoSpreadBeyondChanceInGroupsThatAreAlike() {
        var alike = Collections.nCopies(10, new Proportion(3, 30));
        var spread = OverDispersion.of(Funnel.of(alike).orElseThrow(), alike).orElseThrow();
        assertThat(spread).isEqualTo(new OverDispersion(10, 0, 0, 0));
        assertThat(spread.isUncertain()).isFalse();
    }

    @Test
    void isSilentWhereNothingIsLeftToCompare() {
        assertThat(Funnel.of(List.of())).isEmpty();
        assertThat(Funnel.of(List.of(new Proportion(0, 9), new Proportion(0, 4))))
                .isEmpty();
        assertThat(Funnel.of(List.of(new Proportion(9, 9)))).isEmpty();
        assertThat(OverDispersion.of(funnel, GROUPS.subList(0, 1))).isEmpty();
    }

    @Test
    void refusesWhatIsNoFunnel() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Funnel(0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Funnel(1));
        assertThatIllegalArgumentException().isThrownBy(() -> funnel.limits(0, Funnel.WARNING));
        assertThatIllegalArgumentException().isThrownBy(() -> funnel.limits(10, 1));
    }

    /** By hand: places 0.3 and 2.7 between four values. */
    @Test
    void drawsQuantilesStraightBetweenValues() {
        var values = List.of(7.0, 1.0, 2.0, 4.0);
        assertThat(Quantile.of(values, 0.1)).isCloseTo(1.3, within(1e-12));
        assertThat(Quantile.of(values, 0.5)).isCloseTo(3, within(1e-12));
        assertThat(Quantile.of(values, 0.9)).isCloseTo(6.1, within(1e-12));
        assertThat(Quantile.of(values, 0)).isEqualTo(1);
        assertThat(Quantile.of(values, 1)).isEqualTo(7);
        assertThat(Quantile.of(List.of(5.0), 0.3)).isEqualTo(5);
        assertThatIllegalArgumentException().isThrownBy(() -> Quantile.of(List.of(), 0.5));
        assertThatIllegalArgumentException().isThrownBy(() -> Quantile.of(values, 1.1));
    }
}
