package org.espalier.science.statistics;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Agreement of two readers on ordered classes beyond chance, disagreements weighed by the square of their distance.
 *
 * <pre>
 * κ = 1 − Σ (a − b)² observed / Σ (a − b)² expected from each reader's own frequencies
 * </pre>
 *
 * <p>Source: Cohen, Psychol Bull 1968;70:213 (from memory). Error: of small series wide; not told here.
 */
public final class WeightedKappa {

    private WeightedKappa() {}

    /** The classes both readers gave, by their place in the order. */
    public record Pair(int first, int second) {}

    /**
     * The agreement.
     *
     * @param pairs one for each case
     * @return at most 1; empty without cases, and where both gave one class alone, so that nothing is left to chance
     */
    public static OptionalDouble of(List<Pair> pairs) {
        double observed = 0;
        double expected = 0;
        for (Pair one : pairs) {
            observed += square(one.first() - one.second());
            for (Pair other : pairs) {
                expected += square(one.first() - other.second());
            }
        }
        return expected == 0 ? OptionalDouble.empty() : OptionalDouble.of(1 - observed * pairs.size() / expected);
    }

    private static double square(int difference) {
        return (double) difference * difference;
    }
}
