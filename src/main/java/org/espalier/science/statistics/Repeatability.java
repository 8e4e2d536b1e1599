package org.espalier.science.statistics;

import java.util.List;

/**
 * How far readings of one thing by one way differ, from pairs of readings.
 *
 * <pre>
 * SD of differences about 0  = √(Σd² / n)
 * within-subject SD          = √(Σd² / 2n)          the standard error of one reading
 * coefficient                = k · SD of differences, k = 2 in the paper
 * </pre>
 *
 * <p>Source: Bland and Altman, Lancet 1986;i:307. A lasting difference between two readers counts as error here.
 *
 * @param pairs how many, at least 1
 * @param differenceDeviation SD of the differences about 0, not below 0
 */
public record Repeatability(int pairs, double differenceDeviation) {

    /**
     * Checks the parts.
     *
     * @throws IllegalArgumentException if there is no pair or the deviation is not finite or below 0
     */
    public Repeatability {
        if (pairs < 1 || !(differenceDeviation >= 0 && Double.isFinite(differenceDeviation))) {
            throw new IllegalArgumentException(
                    "There is no repeatability of " + pairs + " pairs with deviation " + differenceDeviation);
        }
    }

    /**
     * From pairs of readings.
     *
     * @param readings at least 1
     * @throws IllegalArgumentException if there is none
     */
    public static Repeatability of(List<PairedReadings> readings) {
        double squares = readings.stream()
                .mapToDouble(pair -> pair.difference() * pair.difference())
                .sum();
        return new Repeatability(readings.size(), Math.sqrt(squares / Math.max(1, readings.size())));
    }

    /** The standard error of one reading. */
    public double withinSubjectDeviation() {
        return differenceDeviation / Math.sqrt(2);
    }

    /** What two readings of one thing differ by at most, k times the SD of the differences. */
    public double coefficient(double k) {
        return k * differenceDeviation;
    }

    /**
     * The SD of differences between single readings by two ways, when the differences of the means of two readings each
     * are known: √(s² + ¼ s₁² + ¼ s₂²).
     *
     * @param ofMeans SD of the differences of means
     * @param first repeatability of one way
     * @param second repeatability of the other
     */
    public static double deviationOfSingleReadings(double ofMeans, Repeatability first, Repeatability second) {
        return Math.sqrt(ofMeans * ofMeans
                + first.differenceDeviation * first.differenceDeviation / 4
                + second.differenceDeviation * second.differenceDeviation / 4);
    }
}
