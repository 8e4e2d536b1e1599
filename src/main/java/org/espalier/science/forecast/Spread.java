package org.espalier.science.forecast;

import java.util.Arrays;

/**
 * How a quantity in degrees is spread: a weighted sum of normal distributions.
 *
 * <p>Deterministic; quantiles are found to 1e-6 degrees.
 */
public final class Spread {

    private static final double EXACT = 1e-6;
    private static final double REACH = 9;
    private static final int ROUNDS = 100;

    /** So few parts are kept as they are. */
    private static final int FEW = 8;

    private static final double BIN = 0.5;
    private static final double MOST_BINS = 60;

    private final int parts;
    private final double[] weights;
    private final double[] means;
    private final double[] deviations;

    Spread(int parts, double[] weights, double[] means, double[] deviations) {
        this.parts = parts;
        this.weights = weights;
        this.means = means;
        this.deviations = deviations;
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            sum += weights[i];
        }
        for (int i = 0; i < parts; i++) {
            weights[i] /= sum;
        }
    }

    /**
     * A spread of many parts, those close to each other replaced by one of the same mean and variance.
     *
     * <p>Parts are gathered in bins no wider than half the least deviation, narrow and wide ones apart. Error:
     * quantiles move by less than 0.01 of the standard deviation.
     */
    static Spread merged(int parts, double[] weights, double[] means, double[] deviations) {
        if (parts <= FEW) {
            return new Spread(parts, weights, means, deviations);
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts; i++) {
            low = Math.min(low, means[i]);
            high = Math.max(high, means[i]);
            least = Math.min(least, deviations[i]);
        }
        double width = Math.max(least * BIN, (high - low) / MOST_BINS);
        var bins = new Bins((int) ((high - low) / width) + 1);
        for (int i = 0; i < parts; i++) {
            int breadth = deviations[i] < 2 * least ? 0 : deviations[i] < 4 * least ? 1 : 2;
            bins.add((int) ((means[i] - low) / width), breadth, weights[i], means[i], deviations[i]);
        }
        return bins.spread();
    }

    /** One normal distribution. */
    public static Spread ofNormal(double mean, double deviation) {
        return new Spread(1, new double[] {1}, new double[] {mean}, new double[] {deviation});
    }

    /** The mean, in degrees. */
    public double mean() {
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            sum += weights[i] * means[i];
        }
        return sum;
    }

    /** The standard deviation, in degrees. */
    public double standardDeviation() {
        double mean = mean();
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            double away = means[i] - mean;
            sum += weights[i] * (deviations[i] * deviations[i] + away * away);
        }
        return Math.sqrt(sum);
    }

    /** The probability of less than this many degrees, 0 to 1. */
    public double below(double degrees) {
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            sum += weights[i] * NormalTable.below((degrees - means[i]) / deviations[i]);
        }
        return Math.min(1, sum);
    }

    /** The probability density at this many degrees, in 1/degree. */
    public double density(double degrees) {
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            sum += weights[i] / deviations[i] * NormalTable.density((degrees - means[i]) / deviations[i]);
        }
        return sum;
    }

    /**
     * How far a forecast lay from what came: the continuous ranked probability score, 0 for a certain and right one.
     *
     * <pre>
     * Σ wᵢ A(y − mᵢ, sᵢ²) − ½ Σ Σ wᵢ wⱼ A(mᵢ − mⱼ, sᵢ² + sⱼ²)    A(d, v) = d (2 Φ(d/√v) − 1) + 2 √v φ(d/√v)
     * </pre>
     *
     * <p>Source: Grimit, Gneiting, Berrocal and Johnson, Q J R Meteorol Soc 2006;132:2925 (from memory); one part is
     * the formula of Gneiting and others, Mon Weather Rev 2005;133:1098.
     *
     * @param came what came, in degrees
     * @return in degrees
     */
    public double rankedScore(double came) {
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            sum += weights[i] * distance(came - means[i], deviations[i]);
            for (int j = 0; j < parts; j++) {
                sum -= weights[i]
                        * weights[j]
                        * distance(means[i] - means[j], Math.hypot(deviations[i], deviations[j]))
                        / 2;
            }
        }
        return sum;
    }

    private static double distance(double apart, double deviation) {
        double z = apart / deviation;
        return apart * (2 * NormalTable.below(z) - 1) + 2 * deviation * NormalTable.density(z);
    }

    /**
     * The value that is not reached with a probability.
     *
     * @param probability above 0 and below 1
     * @return in degrees
     * @throws IllegalArgumentException if the probability is out of range
     */
    public double quantile(double probability) {
        return quantiles(probability)[0];
    }

    /**
     * Several quantiles, as {@link #quantile}, quicker together.
     *
     * @param probabilities each above 0 and below 1, ascending
     * @return in degrees, ascending
     * @throws IllegalArgumentException if a probability is out of range
     */
    public double[] quantiles(double... probabilities) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < parts; i++) {
            low = Math.min(low, means[i] - REACH * deviations[i]);
            high = Math.max(high, means[i] + REACH * deviations[i]);
        }
        var found = new double[probabilities.length];
        double guess = mean();
        for (int i = 0; i < probabilities.length; i++) {
            if (!(probabilities[i] > 0 && probabilities[i] < 1)) {
                throw new IllegalArgumentException("There is no quantile at " + probabilities[i]);
            }
            found[i] = quantile(probabilities[i], low, high, guess);
            low = found[i] - EXACT;
            guess = found[i];
        }
        return found;
    }

    /** Newton's steps inside a bracket that is halved where they leave it. */
    private double quantile(double probability, double from, double to, double guess) {
        double low = from;
        double high = to;
        double at = Math.clamp(guess, low, high);
        for (int round = 0; round < ROUNDS && high - low > EXACT; round++) {
            double beyond = below(at) - probability;
            if (beyond > 0) {
                high = at;
            } else {
                low = at;
            }
            double next = at - beyond / Math.max(density(at), Double.MIN_NORMAL);
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - at) < EXACT) {
                return next;
            }
            at = next;
        }
        return at;
    }

    /** The spread of this less another that is independent of it. */
    public Spread minus(Spread other) {
        int all = parts * other.parts;
        var weight = new double[all];
        var mean = new double[all];
        var deviation = new double[all];
        for (int i = 0; i < parts; i++) {
            for (int j = 0; j < other.parts; j++) {
                int at = i * other.parts + j;
                weight[at] = weights[i] * other.weights[j];
                mean[at] = means[i] - other.means[j];
                deviation[at] = Math.hypot(deviations[i], other.deviations[j]);
            }
        }
        return merged(all, weight, mean, deviation);
    }

    /** The spread of the value times a factor, plus a constant. */
    public Spread scaled(double factor, double constant) {
        var moved = new double[parts];
        var stretched = new double[parts];
        for (int i = 0; i < parts; i++) {
            moved[i] = constant + factor * means[i];
            stretched[i] = Math.abs(factor) * deviations[i];
        }
        return new Spread(parts, Arrays.copyOf(weights, parts), moved, stretched);
    }

    /** Sums of weights, means and squares, by place and width. */
    private static final class Bins {

        private static final int CLASSES = 3;

        private final double[] weight;
        private final double[] mean;
        private final double[] square;

        Bins(int places) {
            weight = new double[places * CLASSES];
            mean = new double[places * CLASSES];
            square = new double[places * CLASSES];
        }

        void add(int place, int width, double share, double centre, double deviation) {
            int bin = place * CLASSES + width;
            weight[bin] += share;
            mean[bin] += share * centre;
            square[bin] += share * (centre * centre + deviation * deviation);
        }

        Spread spread() {
            int count = 0;
            for (int bin = 0; bin < weight.length; bin++) {
                if (weight[bin] > 0) {
                    double share = weight[bin];
                    double centre = mean[bin] / share;
                    double variance = square[bin] / share - centre * centre;
                    weight[count] = share;
                    mean[count] = centre;
                    square[count++] = Math.sqrt(variance);
                }
            }
            return new Spread(count, weight, mean, square);
        }
    }

    /** This spread or, with a chance, another. */
    Spread mixedWith(Spread other, double chance) {
        int all = parts + other.parts;
        var weight = new double[all];
        var mean = Arrays.copyOf(means, all);
        var deviation = Arrays.copyOf(deviations, all);
        for (int i = 0; i < parts; i++) {
            weight[i] = (1 - chance) * weights[i];
        }
        for (int i = 0; i < other.parts; i++) {
            weight[parts + i] = chance * other.weights[i];
            mean[parts + i] = other.means[i];
            deviation[parts + i] = other.deviations[i];
        }
        return new Spread(all, weight, mean, deviation);
    }
}
