package org.espalier.science.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.distribution.discrete.PoissonDistribution;
import org.junit.jupiter.api.Test;

class CompoundPoissonTests {

    /** Sums of about a thousand doubles. */
    private static final double ROUNDING = 1e-11;

    private static final List<Double> FOURS = List.of(0.0, 0.0, 0.0, 0.0, 1.0);

    @Test
    void coversLessThanACountOfPiecesPromises() {
        // The printed case: mean 8 as two children × 4, stock 13: 85.7 %, where Poisson says 96.6 %.
        // By hand: at most 13 pieces are at most 3 operations: e^−2 (1 + 2 + 2 + 4/3) = 0.857123
        var truly = new CompoundPoisson(2, FOURS);
        assertThat(truly.mean()).isEqualTo(8);
        assertThat(truly.variance()).isEqualTo(32);
        assertThat(truly.atMost(13)).isCloseTo(0.857, within(0.0005));
        assertThat(truly.atMost(13)).isCloseTo(Math.exp(-2) * (1 + 2 + 2 + 4.0 / 3), within(ROUNDING));
        assertThat(new CompoundPoisson(8, List.of(0.0, 1.0)).atMost(13)).isCloseTo(0.966, within(0.0005));
        assertThat(truly.stockFor(0.95)).isEqualTo(20);
        assertThat(new CompoundPoisson(8, List.of(0.0, 1.0)).stockFor(0.95)).isEqualTo(13);
    }

    @Test
    void isPoissonWherePiecesGoOneByOne() {
        // against Hipparchus 4.0.2
        for (double mean : new double[] {0.1, 1, 8, 60, 500}) {
            var pieces = new CompoundPoisson(mean, List.of(0.0, 1.0));
            var poisson = new PoissonDistribution(mean);
            for (int most = 0; most < 3 * mean + 5; most++) {
                assertThat(pieces.atMost(most)).isCloseTo(poisson.cumulativeProbability(most), within(ROUNDING));
            }
        }
    }

    @Test
    void isTheSumOverHowManyOperationsCome() {
        // against Hipparchus' Poisson for the operations and pieces folded together one operation after the other
        var each = new double[] {0.1, 0.0, 0.5, 0.0, 0.3, 0.0, 0.1};
        var compound = new CompoundPoisson(5.5, List.of(0.1, 0.0, 0.5, 0.0, 0.3, 0.0, 0.1));
        var operations = new PoissonDistribution(5.5);
        int most = 80;
        var sum = new double[most + 1];
        var together = new double[most + 1];
        together[0] = 1;
        for (int count = 0; count < 60; count++) {
            for (int at = 0; at <= most; at++) {
                sum[at] += operations.probability(count) * together[at];
            }
            together = folded(together, each);
        }
        double below = 0;
        for (int at = 0; at <= most; at++) {
            below += sum[at];
            assertThat(compound.atMost(at)).isCloseTo(below, within(ROUNDING));
        }
        assertThat(compound.mean()).isCloseTo(5.5 * (2 * 0.5 + 4 * 0.3 + 6 * 0.1), within(ROUNDING));
    }

    @Test
    void suffersNoStockThatIsOneTooSmall() {
        var compound = CompoundPoisson.ofPast(3.2, List.of(2, 4, 4, 8));
        for (double service : new double[] {0.5, 0.9, 0.95, 0.99, 0.999}) {
            int stock = compound.stockFor(service);
            assertThat(compound.atMost(stock)).isGreaterThanOrEqualTo(service);
            assertThat(compound.atMost(stock - 1)).isLessThan(service);
        }
    }

    @Test
    void needsNothingWhereNothingIsTaken() {
        assertThat(new CompoundPoisson(0, FOURS).stockFor(0.999)).isZero();
        assertThat(CompoundPoisson.ofPast(9, List.of(0, 0)).stockFor(0.999)).isZero();
        assertThat(new CompoundPoisson(2, FOURS).atMost(-1)).isZero();
    }

    @Test
    void refusesWhatIsNoDistribution() {
        assertThatThrownBy(() -> new CompoundPoisson(-1, FOURS)).hasMessageContaining("-1");
        assertThatThrownBy(() -> new CompoundPoisson(Double.NaN, FOURS)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new CompoundPoisson(701, FOURS)).hasMessageContaining("701");
        assertThatThrownBy(() -> new CompoundPoisson(1, List.of(0.5, 0.4))).hasMessageContaining("0.9");
        assertThatThrownBy(() -> new CompoundPoisson(1, List.of())).hasMessageContaining("0.0");
        assertThatThrownBy(() -> CompoundPoisson.ofPast(1, List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CompoundPoisson(2, FOURS).stockFor(1)).hasMessageContaining("1.0");
    }

    private static double[] folded(double[] sums, double[] each) {
        var more = new double[sums.length];
        for (int at = 0; at < sums.length; at++) {
            for (int taken = 0; taken < each.length && taken <= at; taken++) {
                more[at] += each[taken] * sums[at - taken];
            }
        }
        return more;
    }
}
