package org.espalier.science.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether failures come oftener than was foretold, case by case: the risk-adjusted log-likelihood CUSUM, and the
 * running sum of failures less those expected.
 *
 * <pre>
 * X = max(0, X before + W)     X starts at 0; the chart signals at X ≥ h
 * W = ln(R / (1 − p + R p))    at a failure
 *   = −ln(1 − p + R p)         at a success         p the chance of failure foretold, R the odds ratio looked for
 * </pre>
 *
 * <p>A signal says that the odds of failing look more like R times those foretold than like those foretold; why is for
 * people to find: other children, other care, or chances foretold too low. The path goes on after a signal and never
 * starts anew by itself. Cases are to be independent of each other and each p foretold without knowledge of the end.
 *
 * <p>Source: Steiner, Cook, Farewell and Treasure, Biostatistics 2000;1:441 (abstract read, formulas from memory).
 * Error: rounding alone; how rarely it signals falsely depends on h, see {@link #DOUBLED_ODDS}.
 *
 * @param oddsRatio R, above 1
 * @param limit h, above 0
 */
public record RiskAdjustedChart(double oddsRatio, double limit) {

    /**
     * Looks for doubled odds of failure, R = 2, with h = 2.5: a choice. With chances of 0.1 it signals falsely after
     * about 480 cases on average, and after about 60 once the odds have doubled.
     */
    public static final RiskAdjustedChart DOUBLED_ODDS = new RiskAdjustedChart(2, 2.5);

    /**
     * Checks both.
     *
     * @throws IllegalArgumentException if the odds ratio is not finite and above 1 or the limit not finite and above 0
     */
    public RiskAdjustedChart {
        if (!(oddsRatio > 1 && Double.isFinite(oddsRatio)) || !(limit > 0 && Double.isFinite(limit))) {
            throw new IllegalArgumentException(
                    "There is no chart of failures for odds ratio " + oddsRatio + " and limit " + limit);
        }
    }

    /**
     * One case whose end is known.
     *
     * @param chance p, of failure, as it was foretold, 0 to 1
     * @param failed whether it failed
     */
    public record Case(double chance, boolean failed) {

        /**
         * Checks the chance.
         *
         * @throws IllegalArgumentException if it is not from 0 to 1
         */
        public Case {
            if (!(chance >= 0 && chance <= 1)) {
                throw new IllegalArgumentException("A chance is from 0 to 1, not " + chance);
            }
        }
    }

    /**
     * Where the chart stands after a case.
     *
     * @param score X, not below 0
     * @param observedLessExpected failures less the sum of their chances so far, + for more failures than foretold
     * @param signals whether X is at h or above
     */
    public record Point(double score, double observedLessExpected, boolean signals) {}

    /**
     * The chart.
     *
     * @param cases in the order in which their ends became known
     * @return a point after each case
     */
    public List<Point> path(List<Case> cases) {
        var points = new ArrayList<Point>();
        double score = 0;
        double excess = 0;
        for (Case one : cases) {
            score = Math.max(0, score + weight(one));
            excess += (one.failed() ? 1 : 0) - one.chance();
            points.add(new Point(score, excess, score >= limit));
        }
        return List.copyOf(points);
    }

    /** W of one case: positive at a failure, negative at a success, 0 at an end foretold for certain. */
    double weight(Case one) {
        double odds = Math.log(1 - one.chance() + oddsRatio * one.chance());
        return (one.failed() ? Math.log(oddsRatio) : 0) - odds;
    }
}
