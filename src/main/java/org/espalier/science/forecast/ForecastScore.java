package org.espalier.science.forecast;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.espalier.science.statistics.NormalDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * How honest many forecasts were.
 *
 * <p>Forecasts of one limb follow one another: take one of each limb, or judge by child.
 */
public final class ForecastScore {

    private ForecastScore() {}

    /**
     * The continuous ranked probability score of a few equally likely values.
     *
     * @param values the forecast
     * @param came what came
     * @return in the unit of the values
     */
    public static double ranked(double[] values, double came) {
        double off = Arrays.stream(values)
                .map(value -> Math.abs(value - came))
                .average()
                .orElseThrow();
        double apart = 0;
        for (double one : values) {
            for (double other : values) {
                apart += Math.abs(one - other);
            }
        }
        return off - apart / (2.0 * values.length * values.length);
    }

    /**
     * The mean square between chances and what came.
     *
     * <p>Source: Brier, Mon Weather Rev 1950;78:1 (from memory).
     *
     * @param chances each 0 to 1, at least one
     * @param came whether each came
     * @return 0 for certain and right, 1 for certain and wrong
     * @throws IllegalArgumentException if there is no chance, or not as many answers as chances
     */
    public static double brier(double[] chances, boolean[] came) {
        checkPairs(chances, came);
        double sum = 0;
        for (int i = 0; i < chances.length; i++) {
            double off = chances[i] - (came[i] ? 1 : 0);
            sum += off * off;
        }
        return sum / chances.length;
    }

    /**
     * Whether chances fit what came, as a standard normal value if they do.
     *
     * <pre>
     * z = Σ (o − p)(1 − 2p) / √Σ (1 − 2p)² p (1 − p)        o = 1 for what came, 0 else
     * </pre>
     *
     * <p>Positive when small chances came too often or large ones too seldom; a chance of ½ says nothing to it. Source:
     * Spiegelhalter, Stat Med 1986;5:421 (from memory).
     *
     * @param chances each 0 to 1, at least one
     * @param came whether each came
     * @return empty where every chance is 0, ½ or 1
     * @throws IllegalArgumentException if there is no chance, or not as many answers as chances
     */
    public static OptionalDouble spiegelhalter(double[] chances, boolean[] came) {
        checkPairs(chances, came);
        double above = 0;
        double below = 0;
        for (int i = 0; i < chances.length; i++) {
            double p = chances[i];
            above += ((came[i] ? 1 : 0) - p) * (1 - 2 * p);
            below += (1 - 2 * p) * (1 - 2 * p) * p * (1 - p);
        }
        return below == 0 ? OptionalDouble.empty() : OptionalDouble.of(above / Math.sqrt(below));
    }

    private static void checkPairs(double[] chances, boolean[] came) {
        if (chances.length == 0 || chances.length != came.length) {
            throw new IllegalArgumentException(
                    "To judge chances there is an answer to each: " + chances.length + ", " + came.length);
        }
    }

    /** The two-sided probability of a standard normal value this far out. */
    public static double twoSided(double z) {
        return 2 * NormalDistribution.STANDARD.above(Math.abs(z));
    }

    /**
     * How many places of what came lie in each of equal bins: even if forecasts are honest, high at both ends if they
     * are too narrow, high in the middle if too wide.
     *
     * <p>Source: Gneiting, Balabdaoui and Raftery, J R Stat Soc B 2007;69:243.
     *
     * @param places for each forecast the chance it gave to less than what came, 0 to 1
     * @param bins how many, at least 1
     * @return lowest bin first; a place on a border counts in the bin above, 1 in the last
     * @throws IllegalArgumentException if a place is not from 0 to 1 or there is no bin
     */
    public static int[] histogram(double[] places, int bins) {
        if (bins < 1 || !Arrays.stream(places).allMatch(place -> place >= 0 && place <= 1)) {
            throw new IllegalArgumentException(
                    "Places from 0 to 1 are counted in bins, not " + Arrays.toString(places) + " in " + bins);
        }
        int[] counts = new int[bins];
        for (double place : places) {
            counts[Math.min(bins - 1, (int) (place * bins))]++;
        }
        return counts;
    }

    /**
     * The greatest distance between the places of what came in its forecasts and an even spread: Kolmogorov and
     * Smirnov's.
     *
     * @param places for each forecast the chance it gave to less than what came, 0 to 1
     */
    public static double unevenness(double[] places) {
        double[] sorted = sorted(places);
        int n = sorted.length;
        double most = 0;
        for (int i = 0; i < n; i++) {
            most = Math.max(most, Math.max((i + 1.0) / n - sorted[i], sorted[i] - (double) i / n));
        }
        return most;
    }

    /** Anderson and Darling's A² of the same, which looks harder at the ends. */
    public static double unevennessAtTheEnds(double[] places) {
        double[] sorted = sorted(places);
        int n = sorted.length;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += (2 * i + 1) * (Math.log(sorted[i]) + Math.log1p(-sorted[n - 1 - i]));
        }
        return -n - sum / n;
    }

    /**
     * The two-sided exact probability of so many hits: of all counts that are no likelier than this one.
     *
     * @param hits how often what came lay in the interval
     * @param forecasts of how many
     * @param nominal the interval's chance, 0 to 1
     */
    public static double exactCoverage(int hits, int forecasts, double nominal) {
        var binomial = new BinomialDistribution(forecasts, nominal);
        double seen = binomial.probability(hits) * (1 + 1e-9);
        double sum = 0;
        for (int count = 0; count <= forecasts; count++) {
            double chance = binomial.probability(count);
            sum += chance <= seen ? chance : 0;
        }
        return Math.min(1, sum);
    }

    private static double[] sorted(double[] places) {
        double[] sorted = places.clone();
        Arrays.sort(sorted);
        return sorted;
    }
}
