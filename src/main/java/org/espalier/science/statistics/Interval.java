package org.espalier.science.statistics;

/**
 * From a low to a high value, ends included.
 *
 * @param low finite, not above high
 * @param high finite
 */
public record Interval(double low, double high) {

    /**
     * Checks the ends.
     *
     * @throws IllegalArgumentException if an end is not finite or they are not in order
     */
    public Interval {
        if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
            throw new IllegalArgumentException("An interval runs from low to high, not from " + low + " to " + high);
        }
    }

    /** From a distance below a middle to as far above it. */
    public static Interval around(double middle, double halfWidth) {
        return new Interval(middle - halfWidth, middle + halfWidth);
    }

    /** Whether the value lies in it. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }
}
