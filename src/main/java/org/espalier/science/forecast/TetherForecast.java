package org.espalier.science.forecast;

import java.util.Arrays;
import org.espalier.science.forecast.Hypotheses.Kind;

/**
 * Where one growth plate under a tether is going, as known at its last film, the plate kept in. Months count from the
 * day the plate was placed.
 */
public final class TetherForecast {

    /** Hypotheses lighter than this are dropped once the films are weighed. */
    private static final double NEGLIGIBLE = 2e-4;

    /** In how many steps failure still to come is spread. */
    private static final int FAILURES = 3;

    /** Chances of failure below this are left out of a spread of degrees. */
    private static final double UNLIKELY = 1e-5;

    private final Hypotheses hypotheses;
    private final double[] weights;
    private final double failuresAMonth;
    private final double noResponse;
    private final double failed;

    private TetherForecast(Hypotheses hypotheses, double failuresAMonth) {
        noResponse = share(hypotheses, Kind.NO_RESPONSE);
        failed = share(hypotheses, Kind.FAILED);
        hypotheses.prune(NEGLIGIBLE);
        this.hypotheses = hypotheses;
        this.failuresAMonth = failuresAMonth;
        weights = hypotheses.weights();
    }

    /**
     * The forecast from a growth plate's films and a centre's rates.
     *
     * @param physis the growth plate and its films, none or many
     * @param rates published ones or the centre's
     */
    public static TetherForecast of(TetheredPhysis physis, CentreRates rates) {
        return new TetherForecast(PriorHypotheses.afterFilms(physis, rates), rates.failuresAMonth(physis.cause()));
    }

    /** The forecast from ways given one by one, without failures to come. */
    static TetherForecast of(Hypotheses hypotheses) {
        return new TetherForecast(hypotheses, 0);
    }

    private static double share(Hypotheses hypotheses, Kind kind) {
        double[] weights = hypotheses.weights();
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += hypotheses.kind[i] == kind ? weights[i] : 0;
        }
        return sum;
    }

    /** Months since the plate from which it looks ahead: the last film, or the plate's own day. */
    public double from() {
        return hypotheses.now();
    }

    /** Months since the plate after which nothing grows any more. */
    public double growthEnds() {
        int months = 0;
        for (int i = 0; i < weights.length; i++) {
            months = Math.max(months, hypotheses.time[i].months());
        }
        return Math.max(months, from());
    }

    /** The chance that the growth plate does not respond to the plate, 0 to 1. */
    public double noResponse() {
        return noResponse;
    }

    /** The chance that its hardware has failed by now, 0 to 1. */
    public double hardwareFailed() {
        return failed;
    }

    /** The chance that it does not respond or its hardware has failed by now, 0 to 1. */
    public double failing() {
        return noResponse + failed;
    }

    /**
     * How degrees left are spread at a time to come.
     *
     * @param months since the plate; a time before {@link #from} gives that of {@link #from}
     */
    public Spread degreesLeft(double months) {
        return spread(months, 0, 0);
    }

    /**
     * How a film taken at a time to come will read, its own error included.
     *
     * @param months since the plate; a time before {@link #from} gives that of {@link #from}
     */
    public Spread film(double months) {
        return spread(months, hypotheses.filmVariance(), hypotheses.outlyingShare());
    }

    private Spread spread(double months, double filmVariance, double outlyingShare) {
        double to = Math.max(months, from());
        int failures = failuresAMonth > 0 && to > from() ? FAILURES : 0;
        int capacity = weights.length * (1 + failures) * (outlyingShare > 0 ? 2 : 1);
        var parts = new Parts(capacity, filmVariance, outlyingShare);
        double slice = (to - from()) / FAILURES;
        for (int i = 0; i < weights.length; i++) {
            boolean mayFail = failures > 0 && hypotheses.kind[i] == Kind.RESPONDS;
            double intact = mayFail ? Math.exp(-failuresAMonth * (to - from())) : 1;
            parts.add(weights[i] * intact, meanAt(i, to), varianceAt(i, to));
            for (int step = 0; mayFail && step < failures; step++) {
                double share = Math.exp(-failuresAMonth * step * slice) * -Math.expm1(-failuresAMonth * slice);
                if (weights[i] * share > UNLIKELY) {
                    addFailing(parts, i, weights[i] * share, from() + (step + 0.5) * slice, to);
                }
            }
        }
        return parts.spread();
    }

    private void addFailing(Parts parts, int i, double weight, double fails, double to) {
        double grown = hypotheses.grown(i, fails, to);
        parts.add(
                weight,
                meanAt(i, fails) - Hypotheses.FAILED_EFFICIENCY * grown,
                varianceAt(i, fails) + Math.pow(Hypotheses.FAILED_SPREAD * grown, 2));
    }

    private double meanAt(int i, double months) {
        return hypotheses.left[i] - hypotheses.efficiency[i] * hypotheses.grown(i, from(), months);
    }

    private double varianceAt(int i, double months) {
        double grown = hypotheses.grown(i, from(), months);
        double wandered = hypotheses.wandering[i] * (months - from());
        return hypotheses.leftVariance[i]
                + grown * (grown * (hypotheses.efficiencyVariance[i] + wandered / 3) - 2 * hypotheses.covariance[i]);
    }

    /** When the target is reached, the plate kept in. */
    public ReachingTime reachingTarget() {
        return reachingTarget(ReachingTime.FINE);
    }

    /** The same with chances taken at times so many months apart. */
    ReachingTime reachingTarget(double fine) {
        double[] months = ReachingTime.grid(from(), growthEnds(), fine);
        var reached = new double[months.length];
        for (int i = 0; i < weights.length; i++) {
            double failures = hypotheses.kind[i] == Kind.RESPONDS ? failuresAMonth : 0;
            double most = 0;
            for (int step = 0; step < months.length; step++) {
                double mean = meanAt(i, months[step]);
                double beyond = NormalTable.below(-mean / Math.sqrt(varianceAt(i, months[step])));
                if (beyond > most) {
                    double intact = failures == 0 ? 1 : Math.exp(-failures * (months[step] - from()));
                    reached[step] += weights[i] * intact * (beyond - most);
                    most = beyond;
                }
            }
        }
        Arrays.parallelPrefix(reached, Double::sum);
        return new ReachingTime(months, reached);
    }

    /** Parts of a spread as they are gathered. */
    private static final class Parts {

        private final double filmVariance;
        private final double outlyingShare;
        private final double[] weight;
        private final double[] mean;
        private final double[] deviation;
        private int count;

        Parts(int capacity, double filmVariance, double outlyingShare) {
            this.filmVariance = filmVariance;
            this.outlyingShare = outlyingShare;
            weight = new double[capacity];
            mean = new double[capacity];
            deviation = new double[capacity];
        }

        void add(double share, double centre, double variance) {
            put(share * (1 - outlyingShare), centre, variance + filmVariance);
            if (outlyingShare > 0) {
                put(share * outlyingShare, centre, variance + Hypotheses.outlyingVariance(filmVariance));
            }
        }

        private void put(double share, double centre, double variance) {
            if (share > 0) {
                weight[count] = share;
                mean[count] = centre;
                deviation[count++] = Math.sqrt(variance);
            }
        }

        Spread spread() {
            return Spread.merged(count, weight, mean, deviation);
        }
    }
}
