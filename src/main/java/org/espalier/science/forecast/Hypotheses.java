package org.espalier.science.forecast;

import java.util.Arrays;

/**
 * The ways a tethered growth plate may go, each with its weight: whether it responds, how strongly, from when, how ripe
 * the skeleton is, when its hardware failed. Given one of them, angle and efficiency are normal and follow the films by
 * a Kalman filter.
 *
 * <pre>
 * x(t) = x(s) − r (S(t) − S(s))    degrees left; S the degrees of a typical plate, r the efficiency
 * r(t) = r(s) + √q W(t − s)        wandering
 * y    = x(t) + e                  e normal, with a share of films of far larger error
 * </pre>
 *
 * <p>Of each film both errors are weighed and the two results replaced by one of the same mean and variance. With one
 * hypothesis, no outlying films, no wandering this is the exact conjugate result.
 */
final class Hypotheses {

    /** What a hypothesis says of the growth plate until now. */
    enum Kind {
        RESPONDS,
        NO_RESPONSE,
        FAILED
    }

    /** After how many months hardware failed that has not. */
    static final double NOT_FAILED = Double.POSITIVE_INFINITY;

    /** An outlying film's error is so many times the usual one. */
    private static final double OUTLYING = 3.5;

    /** Efficiency after hardware failed: a slow return, in parts of a typical plate. */
    static final double FAILED_EFFICIENCY = -0.06;

    static final double FAILED_SPREAD = 0.10;

    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    /** No film is less likely than this, so that a slip of the pen leaves every hypothesis a weight. */
    private static final double LEAST = 1e-250;

    private final double filmVariance;
    private final double outlyingShare;
    private int count;
    private double now;
    private double logScale;
    double[] weight = new double[0];
    double[] left = new double[0];
    double[] efficiency = new double[0];
    double[] leftVariance = new double[0];
    double[] covariance = new double[0];
    double[] efficiencyVariance = new double[0];
    double[] wandering = new double[0];
    double[] lag = new double[0];
    double[] failsAt = new double[0];
    TetherTime[] time = new TetherTime[0];
    Kind[] kind = new Kind[0];

    /**
     * None yet.
     *
     * @param from months since the plate at which they begin
     * @param filmError standard deviation of a film, in degrees
     * @param outlyingShare share of films of far larger error, 0 to below 1
     */
    Hypotheses(double from, double filmError, double outlyingShare, int capacity) {
        now = from;
        filmVariance = filmError * filmError;
        this.outlyingShare = outlyingShare;
        reserve(capacity);
    }

    private void reserve(int capacity) {
        weight = Arrays.copyOf(weight, capacity);
        left = Arrays.copyOf(left, capacity);
        efficiency = Arrays.copyOf(efficiency, capacity);
        leftVariance = Arrays.copyOf(leftVariance, capacity);
        covariance = Arrays.copyOf(covariance, capacity);
        efficiencyVariance = Arrays.copyOf(efficiencyVariance, capacity);
        wandering = Arrays.copyOf(wandering, capacity);
        lag = Arrays.copyOf(lag, capacity);
        failsAt = Arrays.copyOf(failsAt, capacity);
        time = Arrays.copyOf(time, capacity);
        kind = Arrays.copyOf(kind, capacity);
    }

    /**
     * Adds one.
     *
     * @param wanders standard deviation of the efficiency's wandering in a month
     */
    void add(
            Kind what,
            double share,
            TetherTime clock,
            double lagMonths,
            double failsAtMonths,
            Start start,
            double typical,
            double spread,
            double wanders) {
        int i = count++;
        kind[i] = what;
        weight[i] = share;
        time[i] = clock;
        lag[i] = lagMonths;
        failsAt[i] = failsAtMonths;
        left[i] = start.mean();
        leftVariance[i] = start.deviation() * start.deviation();
        efficiency[i] = typical;
        efficiencyVariance[i] = spread * spread;
        wandering[i] = wanders * wanders;
    }

    /** Degrees left before any film. */
    record Start(double mean, double deviation) {}

    int count() {
        return count;
    }

    double now() {
        return now;
    }

    double filmVariance() {
        return filmVariance;
    }

    double outlyingShare() {
        return outlyingShare;
    }

    static double outlyingVariance(double filmVariance) {
        return OUTLYING * OUTLYING * filmVariance;
    }

    /** Takes a film at so many months since the plate, not before the one before. */
    void observe(double months, double degreesLeft) {
        double most = 0;
        for (int i = 0; i < count; i++) {
            advance(i, months);
            observe(i, degreesLeft);
            most = Math.max(most, weight[i]);
        }
        now = months;
        rescale(most);
    }

    /** Keeps the weights near 1 and their common factor apart, so that no number of films makes them vanish. */
    private void rescale(double most) {
        double factor = most > 0 ? most : 1;
        for (int i = 0; i < count; i++) {
            weight[i] /= factor;
        }
        logScale += Math.log(factor);
    }

    /** Moves all to so many months since the plate without a film. */
    void advance(double months) {
        for (int i = 0; i < count; i++) {
            advance(i, months);
        }
        now = months;
    }

    private void advance(int i, double to) {
        double fails = failsAt[i];
        if (fails > now && fails <= to) {
            step(i, now, fails);
            fail(i);
            step(i, fails, to);
        } else {
            step(i, now, to);
        }
    }

    private void fail(int i) {
        efficiency[i] = FAILED_EFFICIENCY;
        efficiencyVariance[i] = FAILED_SPREAD * FAILED_SPREAD;
        covariance[i] = 0;
        wandering[i] = 0;
    }

    /** Degrees of a typical plate between two times under a hypothesis. */
    double grown(int i, double from, double to) {
        return time[i].at(Math.max(to, lag[i])) - time[i].at(Math.max(from, lag[i]));
    }

    private void step(int i, double from, double to) {
        double grown = grown(i, from, to);
        double wandered = wandering[i] * (to - from);
        left[i] -= efficiency[i] * grown;
        leftVariance[i] += grown * (grown * (efficiencyVariance[i] + wandered / 3) - 2 * covariance[i]);
        covariance[i] -= grown * (efficiencyVariance[i] + wandered / 2);
        efficiencyVariance[i] += wandered;
    }

    private void observe(int i, double degreesLeft) {
        double away = degreesLeft - left[i];
        double usual = leftVariance[i] + filmVariance;
        double far = leftVariance[i] + outlyingVariance(filmVariance);
        double likeUsual = (1 - outlyingShare) * density(away, usual);
        double likeFar = outlyingShare * density(away, far);
        double like = Math.max(likeUsual + likeFar, LEAST);
        weight[i] *= like;
        update(i, away, usual, likeFar / like, far);
    }

    /** The Kalman step, with both errors weighed. */
    private void update(int i, double away, double usual, double shareFar, double far) {
        double weight = (1 - shareFar) / usual + shareFar / far;
        double gain = leftVariance[i] * weight;
        double gainEfficiency = covariance[i] * weight;
        double apart = away * (1 / usual - 1 / far);
        double doubt = shareFar * (1 - shareFar) * apart * apart;
        efficiency[i] += gainEfficiency * away;
        left[i] += gain * away;
        double less = weight - doubt;
        efficiencyVariance[i] -= covariance[i] * covariance[i] * less;
        double kept = leftVariance[i];
        leftVariance[i] -= kept * kept * less;
        covariance[i] -= kept * covariance[i] * less;
    }

    private static double density(double away, double variance) {
        return Math.exp(-away * away / (2 * variance)) / (ROOT_TWO_PI * Math.sqrt(variance));
    }

    /** Multiplies a hypothesis' weight. */
    void weigh(int i, double by) {
        weight[i] *= by;
    }

    private double sum() {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += weight[i];
        }
        return sum;
    }

    /** The logarithm of the sum of all weights: how likely the films were. */
    double logLikelihood() {
        return logScale + Math.log(sum());
    }

    /** The weights, adding up to 1. */
    double[] weights() {
        double all = sum();
        var weights = new double[count];
        for (int i = 0; i < count; i++) {
            weights[i] = weight[i] / all;
        }
        return weights;
    }

    /** Keeps those with a weight above a share of all. */
    void prune(double least) {
        double lightest = least * sum();
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (weight[i] > lightest) {
                move(i, kept++);
            }
        }
        count = kept;
    }

    private void move(int from, int to) {
        weight[to] = weight[from];
        left[to] = left[from];
        efficiency[to] = efficiency[from];
        leftVariance[to] = leftVariance[from];
        covariance[to] = covariance[from];
        efficiencyVariance[to] = efficiencyVariance[from];
        wandering[to] = wandering[from];
        lag[to] = lag[from];
        failsAt[to] = failsAt[from];
        time[to] = time[from];
        kind[to] = kind[from];
    }
}
