package org.espalier.science.statistics;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * So many of so many, with what the share could be in the long run, 95 % two-sided.
 *
 * <pre>
 * Wilson   (r + z²/2 ± z √(r (n − r)/n + z²/4)) / (n + z²)      z = 1.959964
 * exact    B(0.025; r, n − r + 1) to B(0.975; r + 1, n − r)     B quantile of the beta distribution;
 *                                                       0 at r = 0, 1 at r = n
 * </pre>
 *
 * <p>Wilson's interval covers 95 % on the average of true shares and is the one to show. The exact one covers never
 * less than 95 % and is wider; it is for judging whether a share promised can be true. Both take the n to be
 * independent of each other: two legs of one child are not, and make either look surer than it is.
 *
 * <p>Source: Wilson, J Am Stat Assoc 1927;22:209; Clopper and Pearson, Biometrika 1934;26:404 (formulas from memory);
 * Newcombe, Stat Med 1998;17:857 for the choice.
 *
 * @param count r, how many had it, 0 to n
 * @param of n, of how many, at least 1
 */
public record Proportion(int count, int of) {

    private static final double TAIL = 0.025;

    /**
     * Checks both numbers.
     *
     * @throws IllegalArgumentException if there is nobody, or the count is not from 0 to all of them
     */
    public Proportion {
        if (of < 1 || count < 0 || count > of) {
            throw new IllegalArgumentException("There is no share of " + count + " in " + of);
        }
    }

    /** The share, 0 to 1. */
    public double share() {
        return (double) count / of;
    }

    /** Wilson's score interval without correction for continuity, 95 %, within 0 to 1. */
    public Interval wilson() {
        double z = NormalDistribution.STANDARD.quantile(1 - TAIL);
        double all = of + z * z;
        double middle = (count + z * z / 2) / all;
        double half = z * Math.sqrt((double) count * (of - count) / of + z * z / 4) / all;
        return new Interval(count == 0 ? 0 : Math.max(0, middle - half), count == of ? 1 : Math.min(1, middle + half));
    }

    /** The exact interval, at least 95 %, within 0 to 1. */
    public Interval exact() {
        return new Interval(
                count == 0 ? 0 : beta(count, of - count + 1.0, TAIL),
                count == of ? 1 : beta(count + 1.0, of - count, 1 - TAIL));
    }

    private static double beta(double first, double second, double probability) {
        return new BetaDistribution(first, second).inverseCumulativeProbability(probability);
    }
}
