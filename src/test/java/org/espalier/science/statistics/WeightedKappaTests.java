package org.espalier.science.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.science.statistics.WeightedKappa.Pair;
import org.junit.jupiter.api.Test;

class WeightedKappaTests {

    /**
     * By hand: 2 disagreements of one class in 4; each meets 4 by chance: 16 pairings with 8 squares, so 1 − 2 · 4 / 8.
     */
    @Test
    void isNoughtWhereReadersAgreeAsByChance() {
        var pairs = List.of(new Pair(0, 0), new Pair(0, 1), new Pair(1, 0), new Pair(1, 1));
        assertThat(WeightedKappa.of(pairs)).hasValueCloseTo(0.0, within(1e-12));
    }

    /** Against the sum over classes of the definition. */
    @Test
    void weighsADisagreementByTheSquareOfItsDistance() {
        var near = List.of(new Pair(0, 1), new Pair(1, 1), new Pair(2, 2));
        assertThat(WeightedKappa.of(near)).hasValueCloseTo(1 - 1 * 3 / expected(near), within(1e-12));
        var far = List.of(new Pair(0, 2), new Pair(1, 1), new Pair(2, 2));
        assertThat(WeightedKappa.of(far).orElseThrow())
                .isLessThan(WeightedKappa.of(near).orElseThrow());
    }

    /** From each reader's own frequencies, class by class. */
    private static double expected(List<Pair> pairs) {
        return IntStream.rangeClosed(0, 2)
                .boxed()
                .flatMap(one -> Stream.of(0, 1, 2)
                        .map(other -> (double) (one - other)
                                * (one - other)
                                * pairs.stream()
                                        .filter(pair -> pair.first() == one)
                                        .count()
                                * pairs.stream()
                                        .filter(pair -> pair.second() == other)
                                        .count()))
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    @Test
    void isOneWhereAllAgreeAndSilentWhereNothingIsLeftToChance() {
        assertThat(WeightedKappa.of(List.of(new Pair(0, 0), new Pair(3, 3)))).hasValueCloseTo(1.0, within(1e-12));
        assertThat(WeightedKappa.of(List.of(new Pair(2, 2), new Pair(2, 2)))).isEmpty();
        assertThat(WeightedKappa.of(List.of())).isEmpty();
    }
}
