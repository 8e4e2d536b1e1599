package org.espalier.science.growth;

import org.espalier.science.statistics.NormalDistribution;

/**
 * Where a child stands among children of the same age and sex in a reference.
 *
 * @param zScore standard deviations from the median
 */
public record Standing(double zScore) {

    /** Above this z-score, the 97th centile, the reference is extrapolated: read it with caution. */
    private static final double END_OF_PRINTED_CENTILES = 1.881;

    /**
     * Checks the z-score.
     *
     * @throws IllegalArgumentException if not finite
     */
    public Standing {
        if (!Double.isFinite(zScore)) {
            throw new IllegalArgumentException("A z-score is finite, not " + zScore);
        }
    }

    /** The percentage of the reference's children at or below, 0 to 100. */
    public double centile() {
        return 100 * NormalDistribution.STANDARD.below(zScore);
    }

    /** Whether it lies beyond the 3rd or 97th centile, where the reference prints none. */
    public boolean isBeyondPrintedCentiles() {
        return Math.abs(zScore) > END_OF_PRINTED_CENTILES;
    }
}
