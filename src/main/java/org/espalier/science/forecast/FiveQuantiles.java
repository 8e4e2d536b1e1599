package org.espalier.science.forecast;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.espalier.science.statistics.NormalDistribution;

/**
 * A spread of which five values were kept, those that 5, 25, 50, 75 and 95 % lie below.
 *
 * <p>Between two of them the standard normal value of the share runs straight, so that a normal distribution is met
 * exactly; beyond the ends it runs on as between the last two. Error: that of the shape between five values; the ends
 * beyond 90 % are a guess.
 *
 * @param low90 5 % lie below
 * @param low50 25 % lie below
 * @param middle half lie below
 * @param high50 75 % lie below
 * @param high90 95 % lie below
 */
public record FiveQuantiles(double low90, double low50, double middle, double high50, double high90) {

    private static final double[] SHARES = {0.05, 0.25, 0.5, 0.75, 0.95};

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if they are not finite or do not ascend
     */
    public FiveQuantiles {
        if (!Double.isFinite(low90)
                || !Double.isFinite(high90)
                || !(low90 < low50 && low50 < middle && middle < high50 && high50 < high90)) {
            throw new IllegalArgumentException("Five quantiles ascend, not " + low90 + ", " + low50 + ", " + middle
                    + ", " + high50 + ", " + high90);
        }
    }

    /** From the five in any order. */
    public static FiveQuantiles of(double... values) {
        var sorted = DoubleStream.of(values).sorted().toArray();
        return new FiveQuantiles(sorted[0], sorted[1], sorted[2], sorted[3], sorted[4]);
    }

    /**
     * A part of the way to a later spread.
     *
     * @param part 0 for this one to 1 for the other
     */
    public FiveQuantiles towards(FiveQuantiles other, double part) {
        double[] mine = values();
        double[] theirs = other.values();
        return of(IntStream.range(0, SHARES.length)
                .mapToDouble(i -> mine[i] + part * (theirs[i] - mine[i]))
                .toArray());
    }

    /** Whether a value lies in the middle half. */
    public boolean holdsIn50(double value) {
        return value >= low50 && value <= high50;
    }

    /** Whether a value lies in the middle nine tenths. */
    public boolean holdsIn90(double value) {
        return value >= low90 && value <= high90;
    }

    /** The chance it gave to less than a value, 0 to 1. */
    public double place(double value) {
        double[] at = values();
        int i = segment(at, value);
        double part = (value - at[i]) / (at[i + 1] - at[i]);
        return NormalDistribution.STANDARD.below(normal(i) + part * (normal(i + 1) - normal(i)));
    }

    /** The value that a share lies below, above 0 and below 1. */
    public double quantile(double share) {
        double[] at = values();
        int i = segment(SHARES, share);
        double part = (NormalDistribution.STANDARD.quantile(share) - normal(i)) / (normal(i + 1) - normal(i));
        return at[i] + part * (at[i + 1] - at[i]);
    }

    /** So many values, each as likely as another, as {@link ForecastScore#ranked} takes them. */
    public double[] equallyLikely(int count) {
        return IntStream.range(0, count)
                .mapToDouble(i -> quantile((i + 0.5) / count))
                .toArray();
    }

    private double[] values() {
        return new double[] {low90, low50, middle, high50, high90};
    }

    private static double normal(int i) {
        return NormalDistribution.STANDARD.quantile(SHARES[i]);
    }

    private static int segment(double[] ends, double value) {
        int i = 0;
        while (i < ends.length - 2 && value > ends[i + 1]) {
            i++;
        }
        return i;
    }
}
