package org.espalier.science.statistics;

/**
 * The skewed distribution in which growth tables are printed: a power of the value is normal.
 *
 * <pre>
 * z = ((X/M)^L − 1) / (L S)    X = M (1 + L S z)^(1/L)      L ≠ 0
 * z = ln(X/M) / S              X = M exp(S z)               L = 0
 * </pre>
 *
 * <p>Source: Cole and Green, Stat Med 1992;11:1305.
 *
 * @param power L
 * @param median M, above 0
 * @param variation S, above 0
 */
public record LmsDistribution(double power, double median, double variation) {

    /** A power this near to nought is nought: the formula with a power loses its digits there. */
    private static final double NOUGHT = 1e-9;

    /**
     * Checks the parameters.
     *
     * @throws IllegalArgumentException if one is not finite, or median or variation are not above 0
     */
    public LmsDistribution {
        if (!Double.isFinite(power)
                || !(median > 0 && Double.isFinite(median))
                || !(variation > 0 && Double.isFinite(variation))) {
            throw new IllegalArgumentException(
                    "There is no distribution with L " + power + ", M " + median + ", S " + variation);
        }
    }

    /**
     * How many standard deviations a value lies from the median.
     *
     * @param value above 0
     * @throws IllegalArgumentException if the value is not above 0
     */
    public double zScore(double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException("Only a value above 0 has a z-score, not " + value);
        }
        double logarithm = Math.log(value / median);
        return isNought() ? logarithm / variation : Math.expm1(power * logarithm) / (power * variation);
    }

    /**
     * The value at a z-score.
     *
     * @param zScore any for which 1 + L S z is above 0
     * @throws IllegalArgumentException if the distribution does not reach so far
     */
    public double value(double zScore) {
        double reach = 1 + power * variation * zScore;
        if (!(reach > 0)) {
            throw new IllegalArgumentException("The distribution " + this + " does not reach z-score " + zScore);
        }
        return median * Math.exp(isNought() ? variation * zScore : Math.log(reach) / power);
    }

    /**
     * The distribution part of the way to another, each parameter by itself.
     *
     * @param other the other
     * @param part 0 for this, 1 for the other
     */
    public LmsDistribution towards(LmsDistribution other, double part) {
        return new LmsDistribution(
                power + part * (other.power - power),
                median + part * (other.median - median),
                variation + part * (other.variation - variation));
    }

    private boolean isNought() {
        return Math.abs(power) < NOUGHT;
    }
}
