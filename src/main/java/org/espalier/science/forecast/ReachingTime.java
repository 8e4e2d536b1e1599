package org.espalier.science.forecast;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * When a target is reached, in months since the plate. The chances need not add up to 1: what is missing is the chance
 * that it never is.
 */
public final class ReachingTime {

    /** The usual distance of the first times, in months. */
    static final double FINE = 0.75;

    private static final int FINE_STEPS = 20;
    private static final double WIDENING = 1.12;

    private final double[] months;
    private final double[] reached;

    ReachingTime(double[] months, double[] reached) {
        this.months = months;
        this.reached = reached;
    }

    /** Times at which chances are taken: close at first, wider later, to the end of growth. */
    static double[] grid(double from, double end, double fine) {
        var grid = new double[FINE_STEPS + 1 + (int) Math.ceil((end - from) / fine)];
        int count = 0;
        double step = fine;
        for (double at = from; at < end && count < grid.length - 1; at += step) {
            grid[count++] = at;
            if (fine == FINE && count > FINE_STEPS) {
                step *= WIDENING;
            }
        }
        grid[count++] = Math.max(from, end);
        return Arrays.copyOf(grid, count);
    }

    /** The chance that it is reached by a time, 0 to 1. */
    public double by(double since) {
        if (since < months[0]) {
            return 0;
        }
        int i = 1;
        while (i < months.length && months[i] < since) {
            i++;
        }
        if (i >= months.length) {
            return reached[months.length - 1];
        }
        double part = (since - months[i - 1]) / (months[i] - months[i - 1]);
        return reached[i - 1] + part * (reached[i] - reached[i - 1]);
    }

    /** The chance that it is never reached, 0 to 1. */
    public double never() {
        return Math.max(0, 1 - reached[reached.length - 1]);
    }

    /**
     * How far a forecast lay from what came: the continuous ranked probability score, 0 for a certain and right one.
     *
     * <pre>
     * ∫ (F(t) − [t ≥ when])² dt    from now to the end of growth
     * </pre>
     *
     * <p>Error: trapezoids between the times at which chances were taken.
     *
     * @param when the months since the plate at which the target was reached
     * @return in months
     */
    public double rankedScore(double when) {
        double sum = 0;
        for (int i = 1; i < months.length; i++) {
            double from = Math.clamp(when, months[i - 1], months[i]);
            sum += square(months[i - 1], from, 0) + square(from, months[i], 1);
        }
        return sum;
    }

    private double square(double from, double to, int reachedThen) {
        double first = by(from) - reachedThen;
        double last = by(to) - reachedThen;
        return (to - from) * (first * first + first * last + last * last) / 3;
    }

    /**
     * The time by which it is reached with a probability.
     *
     * @param probability above 0 and below 1
     * @return months since the plate; empty if the chance never rises so far
     * @throws IllegalArgumentException if the probability is out of range
     */
    public OptionalDouble quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("There is no quantile at " + probability);
        }
        if (reached[0] >= probability) {
            return OptionalDouble.of(months[0]);
        }
        for (int i = 1; i < months.length; i++) {
            if (reached[i] >= probability) {
                double part = (probability - reached[i - 1]) / (reached[i] - reached[i - 1]);
                return OptionalDouble.of(months[i - 1] + part * (months[i] - months[i - 1]));
            }
        }
        return OptionalDouble.empty();
    }
}
