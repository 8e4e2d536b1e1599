package org.espalier.science.forecast;

import java.util.Arrays;
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
     * @param chances each 0 to 1
     * @param came whether each came
     */
    public static double brier(double[] chances, boolean[] came) {
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
     * <p>Source: Spiegelhalter, Stat Med 1986;5:421 (from memory).
     */
    public static double spiegelhalter(double[] chances, boolean[] came) {
        double above = 0;
        double below = 0;
        for (int i = 0; i < chances.length; i++) {
            double p = chances[i];
            above += ((came[i] ? 1 : 0) - p) * (1 - 2 * p);
            below += (1 - 2 * p) * (1 - 2 * p) * p * (1 - p);
        }
        return above / Math.sqrt(below);
    }

    /** The two-sided probability of a standard normal value this far out. */
    public static double twoSided(double z) {
        return 2 * NormalDistribution.STANDARD.above(Math.abs(z));
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
