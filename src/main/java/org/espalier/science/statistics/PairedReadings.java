package org.espalier.science.statistics;

/**
 * One thing measured twice.
 *
 * @param first one measurement
 * @param second the other, in the same unit
 */
public record PairedReadings(double first, double second) {

    /**
     * Checks both.
     *
     * @throws IllegalArgumentException if either is not finite
     */
    public PairedReadings {
        if (!Double.isFinite(first) || !Double.isFinite(second)) {
            throw new IllegalArgumentException("Readings are finite, not " + first + " and " + second);
        }
    }

    /** First less second. */
    public double difference() {
        return first - second;
    }

    /** The mean of both. */
    public double mean() {
        return (first + second) / 2;
    }
}
