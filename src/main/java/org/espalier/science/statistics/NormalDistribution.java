package org.espalier.science.statistics;

import org.hipparchus.special.Erf;

/**
 * A normal distribution.
 *
 * @param mean its mean
 * @param standardDeviation its standard deviation, above 0
 */
public record NormalDistribution(double mean, double standardDeviation) {

    /** Mean 0 and standard deviation 1. */
    public static final NormalDistribution STANDARD = new NormalDistribution(0, 1);

    /**
     * Checks both parameters.
     *
     * @throws IllegalArgumentException if the mean is not finite or the standard deviation not finite and above 0
     */
    public NormalDistribution {
        if (!Double.isFinite(mean) || !(standardDeviation > 0 && Double.isFinite(standardDeviation))) {
            throw new IllegalArgumentException(
                    "A normal distribution has no mean " + mean + " and standard deviation " + standardDeviation);
        }
    }

    /** The height of the curve at a value, so that the area under it is 1. */
    public double density(double value) {
        double z = (value - mean) / standardDeviation;
        return Math.exp(-z * z / 2) / (standardDeviation * Math.sqrt(2 * Math.PI));
    }

    /** The probability of a value at or below this, 0 to 1. */
    public double below(double value) {
        return Erf.erfc((mean - value) / (standardDeviation * Math.sqrt(2))) / 2;
    }

    /** The probability of a value above this, 0 to 1; exact far out in the tail. */
    public double above(double value) {
        return Erf.erfc((value - mean) / (standardDeviation * Math.sqrt(2))) / 2;
    }

    /**
     * The value that this share lies below.
     *
     * @param probability above 0 and below 1
     * @throws IllegalArgumentException if it is not in that range
     */
    public double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("A quantile is of a share above 0 and below 1, not of " + probability);
        }
        return mean - standardDeviation * Math.sqrt(2) * Erf.erfcInv(2 * probability);
    }
}
