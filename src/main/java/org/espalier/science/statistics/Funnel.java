package org.espalier.science.statistics;

import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * How far the share of a group may lie from a common one by chance alone, by the size of the group.
 *
 * <pre>
 * limit(p) = (r − α) / n      r the smallest count with P(R ≤ r) ≥ p, R binomial of n and the common share
 * α        = (P(R ≤ r) − p) / P(R = r)
 * z        = (share − θ) / √(θ (1 − θ) / n)
 * </pre>
 *
 * <p>Limits at p either side, exact and drawn straight between counts, cut off at 0 and 1. A group outside is to be
 * looked into; it is neither good nor bad, nor is one inside. Other children, other causes and other ages make groups
 * differ before any care does.
 *
 * <p>Source: Spiegelhalter, Stat Med 2005;24:1185 (abstract read, formulas from memory). Error: of the binomial
 * distribution, below 1e−9.
 *
 * @param target θ, the common share, above 0 and below 1
 */
public record Funnel(double target) {

    /** Chance lets one group in twenty lie outside. */
    public static final double WARNING = 0.95;

    /** Chance lets one group in five hundred lie outside. */
    public static final double ALARM = 0.998;

    /**
     * Checks the share.
     *
     * @throws IllegalArgumentException if it is not above 0 and below 1
     */
    public Funnel {
        if (!(target > 0 && target < 1)) {
            throw new IllegalArgumentException("A common share is above 0 and below 1, not " + target);
        }
    }

    /**
     * Around the share of all groups together.
     *
     * @return empty without groups, and where none or all had it, so that nothing is left to compare
     */
    public static Optional<Funnel> of(List<Proportion> groups) {
        double count = groups.stream().mapToDouble(Proportion::count).sum();
        double of = groups.stream().mapToDouble(Proportion::of).sum();
        return count > 0 && count < of ? Optional.of(new Funnel(count / of)) : Optional.empty();
    }

    /**
     * The limits of the share of a group.
     *
     * @param of n, the size of the group, at least 1
     * @param inside the chance to lie inside, above 0 and below 1: {@link #WARNING} or {@link #ALARM}
     * @return within 0 to 1
     * @throws IllegalArgumentException if the group is empty or the chance out of range
     */
    public Interval limits(int of, double inside) {
        if (of < 1 || !(inside > 0 && inside < 1)) {
            throw new IllegalArgumentException("There are no limits of " + of + " with chance " + inside);
        }
        var chance = new BinomialDistribution(of, target);
        return new Interval(limit(chance, (1 - inside) / 2), limit(chance, (1 + inside) / 2));
    }

    private static double limit(BinomialDistribution chance, double p) {
        int r = chance.inverseCumulativeProbability(p);
        double over = (chance.cumulativeProbability(r) - p) / chance.probability(r);
        return Math.clamp((r - over) / chance.getNumberOfTrials(), 0, 1);
    }

    /** How many standard errors the share of a group lies above the common one. */
    public double standing(Proportion group) {
        return (group.share() - target) / standardError(group);
    }

    /** What the share of a group of this size varies by through chance, √(θ (1 − θ) / n). */
    double standardError(Proportion group) {
        return Math.sqrt(target * (1 - target) / group.of());
    }
}
