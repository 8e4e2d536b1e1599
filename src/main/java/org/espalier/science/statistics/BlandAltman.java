package org.espalier.science.statistics;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How far two ways of measuring agree, from things measured both ways: mean difference d and limits of agreement.
 *
 * <pre>
 * limits                = d ± k s                     k = 2 in the paper, 1.96 for 95 % of normal differences
 * standard error of d   = s / √n
 *    and of a limit     = s √(3/n)                    approximate, as printed
 *                       = s √(1/n + k²/(2(n − 1)))    closer
 * intervals             = ± t(0.975; n − 1) standard errors
 * </pre>
 *
 * <p>The pairs are to be of different limbs: several of one limb make the limits look surer than they are. Source:
 * Bland and Altman, Lancet 1986;i:307.
 *
 * @param pairs how many, at least 2
 * @param meanDifference d, first less second
 * @param standardDeviation s of the differences, not below 0
 */
public record BlandAltman(int pairs, double meanDifference, double standardDeviation) {

    /** The multiple of s that holds 95 % of normal differences. */
    public static final double NINETY_FIVE = 1.96;

    /**
     * Checks the parts.
     *
     * @throws IllegalArgumentException if there are fewer than 2 pairs, d is not finite, or s is not finite or below 0
     */
    public BlandAltman {
        if (pairs < 2
                || !Double.isFinite(meanDifference)
                || !(standardDeviation >= 0 && Double.isFinite(standardDeviation))) {
            throw new IllegalArgumentException("There is no agreement of " + pairs + " pairs with mean difference "
                    + meanDifference + " and standard deviation " + standardDeviation);
        }
    }

    /**
     * From the pairs.
     *
     * @param readings one pair a limb, at least 2
     * @throws IllegalArgumentException if fewer than 2
     */
    public static BlandAltman of(List<PairedReadings> readings) {
        double mean = readings.stream()
                .mapToDouble(PairedReadings::difference)
                .average()
                .orElse(0);
        double squares = readings.stream()
                .mapToDouble(pair -> Math.pow(pair.difference() - mean, 2))
                .sum();
        return new BlandAltman(readings.size(), mean, Math.sqrt(squares / Math.max(1, readings.size() - 1)));
    }

    /** The limits of agreement, k standard deviations either side of the mean difference. */
    public Interval limits(double k) {
        return Interval.around(meanDifference, k * standardDeviation);
    }

    /** The standard error of the mean difference. */
    public double standardErrorOfMean() {
        return standardDeviation / Math.sqrt(pairs);
    }

    /** The standard error of a limit, as the paper approximates it. */
    public double standardErrorOfLimit() {
        return standardDeviation * Math.sqrt(3.0 / pairs);
    }

    /** The standard error of a limit k standard deviations out, without that approximation. */
    public double standardErrorOfLimit(double k) {
        return standardDeviation * Math.sqrt(1.0 / pairs + k * k / (2.0 * (pairs - 1)));
    }

    /** The 95 % interval of the mean difference. */
    public Interval meanInterval() {
        return Interval.around(meanDifference, t() * standardErrorOfMean());
    }

    /** The 95 % interval of the lower limit, by the paper's standard error. */
    public Interval lowerLimitInterval(double k) {
        return Interval.around(limits(k).low(), t() * standardErrorOfLimit());
    }

    /** The 95 % interval of the upper limit, by the paper's standard error. */
    public Interval upperLimitInterval(double k) {
        return Interval.around(limits(k).high(), t() * standardErrorOfLimit());
    }

    private double t() {
        return new TDistribution(pairs - 1.0).inverseCumulativeProbability(0.975);
    }
}
