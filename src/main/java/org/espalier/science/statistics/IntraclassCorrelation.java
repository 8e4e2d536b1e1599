package org.espalier.science.statistics;

import java.util.Optional;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * The part of the variance that lies in the things read rather than in the reading, with its 95 % interval. It depends
 * on how different the things are: tell it with the standard error in the unit of the reading.
 *
 * <pre>
 * (1,1) = (B − W) / (B + (k − 1) W)                      each thing by other readers
 * (2,1) = (B − E) / (B + (k − 1) E + k (J − E)/n)        readers drawn from many; their lasting differences count
 * (3,1) = (B − E) / (B + (k − 1) E)                      these readers alone
 * (1,k) = (B − W) / B    (2,k) = (B − E) / (B + (J − E)/n)    (3,k) = (B − E) / B    means of k readers
 * </pre>
 *
 * <p>Source: Shrout and Fleiss, Psychol Bull 1979;86:420 (formulas from memory, reproduced from the printed data).
 *
 * @param value at most 1
 * @param interval its 95 % interval; empty where it is not defined: nothing left over between readers, or a mean of
 *     readers
 */
public record IntraclassCorrelation(double value, Optional<Interval> interval) {

    private static final double UPPER = 0.975;

    /** A single reading, things read by different readers; empty where nothing varies. */
    public static Optional<IntraclassCorrelation> oneWay(VarianceTable table) {
        int n = table.things();
        int k = table.readers();
        return ratio(table.between() - table.within(), table.between() + (k - 1) * table.within())
                .map(value -> new IntraclassCorrelation(
                        value, oneSided(table.between(), table.within(), n - 1.0, n * (k - 1.0), k)));
    }

    /** A single reading by any of many readers, the form to report; empty where nothing varies. */
    public static Optional<IntraclassCorrelation> agreement(VarianceTable table) {
        return ratio(
                        table.between() - table.residual(),
                        table.between()
                                + (table.readers() - 1) * table.residual()
                                + table.readers() * (table.betweenReaders() - table.residual()) / table.things())
                .map(value -> new IntraclassCorrelation(value, agreementInterval(table, value)));
    }

    /** A single reading by one of these readers; empty where nothing varies. */
    public static Optional<IntraclassCorrelation> consistency(VarianceTable table) {
        int n = table.things();
        int k = table.readers();
        return ratio(table.between() - table.residual(), table.between() + (k - 1) * table.residual())
                .map(value -> new IntraclassCorrelation(
                        value, oneSided(table.between(), table.residual(), n - 1.0, (n - 1.0) * (k - 1), k)));
    }

    /** The mean of k readings, things read by different readers; empty where nothing varies. */
    public static Optional<IntraclassCorrelation> oneWayOfMeans(VarianceTable table) {
        return ratio(table.between() - table.within(), table.between()).map(IntraclassCorrelation::withoutInterval);
    }

    /** The mean of k readers drawn from many; empty where nothing varies. */
    public static Optional<IntraclassCorrelation> agreementOfMeans(VarianceTable table) {
        double readers = (table.betweenReaders() - table.residual()) / table.things();
        return ratio(table.between() - table.residual(), table.between() + readers)
                .map(IntraclassCorrelation::withoutInterval);
    }

    /** The mean of these k readers; empty where nothing varies. */
    public static Optional<IntraclassCorrelation> consistencyOfMeans(VarianceTable table) {
        return ratio(table.between() - table.residual(), table.between()).map(IntraclassCorrelation::withoutInterval);
    }

    /** The degrees of freedom of the interval of {@link #agreement}, by Satterthwaite's approximation. */
    static double degreesOfFreedom(VarianceTable table, double icc) {
        double n = table.things();
        double k = table.readers();
        double readers = k * icc * table.betweenReaders() / table.residual();
        double rest = n * (1 + (k - 1) * icc) - k * icc;
        return (k - 1) * (n - 1) * Math.pow(readers + rest, 2) / ((n - 1) * readers * readers + rest * rest);
    }

    private static Optional<Interval> agreementInterval(VarianceTable table, double icc) {
        if (!(table.residual() > 0)) {
            return Optional.empty();
        }
        double n = table.things();
        double k = table.readers();
        double v = degreesOfFreedom(table, icc);
        double lowF = f(n - 1, v);
        double highF = f(v, n - 1);
        double noise = k * table.betweenReaders() + (k * n - k - n) * table.residual();
        double between = table.between();
        double low = n * (between - lowF * table.residual()) / (lowF * noise + n * between);
        double high = n * (highF * between - table.residual()) / (noise + n * highF * between);
        return Optional.of(new Interval(low, high));
    }

    private static Optional<Interval> oneSided(double between, double noise, double above, double below, int k) {
        if (!(noise > 0)) {
            return Optional.empty();
        }
        double ratio = between / noise;
        double low = ratio / f(above, below);
        double high = ratio * f(below, above);
        return Optional.of(new Interval((low - 1) / (low + k - 1), (high - 1) / (high + k - 1)));
    }

    private static double f(double above, double below) {
        return new FDistribution(above, below).inverseCumulativeProbability(UPPER);
    }

    private static Optional<Double> ratio(double part, double whole) {
        return whole > 0 ? Optional.of(part / whole) : Optional.empty();
    }

    private static IntraclassCorrelation withoutInterval(double value) {
        return new IntraclassCorrelation(value, Optional.empty());
    }
}
