package org.espalier.science.statistics;

import java.util.List;

/**
 * The mean squares of n things each read by the same k readers.
 *
 * <p>Source: two-way analysis of variance without replication, as in Shrout and Fleiss, Psychol Bull 1979;86:420.
 *
 * @param things n, at least 2
 * @param readers k, at least 2
 * @param between mean square between things
 * @param within mean square within things
 * @param betweenReaders mean square between readers
 * @param residual mean square of what is left
 */
public record VarianceTable(
        int things, int readers, double between, double within, double betweenReaders, double residual) {

    private static final double TWO_SIDED_95 = 1.96;

    /**
     * From readings.
     *
     * @param readings a row a thing, a column a reader
     * @throws IllegalArgumentException if there are fewer than 2 rows or columns, or rows of different length
     */
    public static VarianceTable of(List<double[]> readings) {
        int n = readings.size();
        int k = n == 0 ? 0 : readings.getFirst().length;
        if (n < 2 || k < 2 || readings.stream().anyMatch(row -> row.length != k)) {
            throw new IllegalArgumentException(
                    "Readings of at least 2 things by the same 2 or more readers are needed");
        }
        double mean = 0;
        double[] ofThing = new double[n];
        double[] ofReader = new double[k];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < k; j++) {
                double value = readings.get(i)[j];
                mean += value / (n * k);
                ofThing[i] += value / k;
                ofReader[j] += value / n;
            }
        }
        double within = 0;
        for (int i = 0; i < n; i++) {
            for (double value : readings.get(i)) {
                within += square(value - ofThing[i]);
            }
        }
        double readerSquares = n * squares(ofReader, mean);
        return new VarianceTable(
                n,
                k,
                k * squares(ofThing, mean) / (n - 1),
                within / (n * (k - 1.0)),
                readerSquares / (k - 1),
                Math.max(0, within - readerSquares) / ((n - 1.0) * (k - 1)));
    }

    /** The standard error of one reading by any reader, √((J − E)/n + E), J not counted below E. */
    public double standardErrorOfAgreement() {
        return Math.sqrt(Math.max(0, betweenReaders - residual) / things + residual);
    }

    /** The standard error of one reading by one and the same reader, √E. */
    public double standardErrorOfConsistency() {
        return Math.sqrt(residual);
    }

    /** The smallest difference of two readings that is more than reading again would give, 1.96 · √2 · SEM. */
    public double smallestChange95() {
        return TWO_SIDED_95 * Math.sqrt(2) * standardErrorOfAgreement();
    }

    private static double squares(double[] values, double mean) {
        double sum = 0;
        for (double value : values) {
            sum += square(value - mean);
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }
}
