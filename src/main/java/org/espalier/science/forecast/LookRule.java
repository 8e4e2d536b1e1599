package org.espalier.science.forecast;

import java.util.function.DoubleUnaryOperator;

/**
 * When to look again at a growth plate under a tether: the latest time until which the risk of looking no sooner is
 * always borne. The risk is the chance of lying too far past the target once the wait for an operation that begins at
 * the look is over. Times are in any one unit.
 *
 * @param risk the chance that is borne, above 0 and below 1
 * @param longest time until the next look at most, above 0
 */
public record LookRule(double risk, double longest) {

    /** Into how many steps the longest time is cut, so that a risk that falls again later is not overlooked. */
    private static final int STEPS = 24;

    private static final int HALVINGS = 12;

    /**
     * Checks the limits.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public LookRule {
        if (!(risk > 0 && risk < 1) || !(longest > 0)) {
            throw new IllegalArgumentException(
                    "A rule for the next look cannot have risk " + risk + ", longest " + longest);
        }
    }

    /**
     * The latest time of the next look.
     *
     * @param riskOfLookingAt what a look at a time would risk, 0 to 1
     * @param today the time from which the next look is counted
     * @return a time from today to the longest after it; today means that it is due at once
     */
    public double latest(DoubleUnaryOperator riskOfLookingAt, double today) {
        if (riskOfLookingAt.applyAsDouble(today) > risk) {
            return today;
        }
        double safe = today;
        for (int step = 1; step <= STEPS; step++) {
            double next = today + longest * step / STEPS;
            if (riskOfLookingAt.applyAsDouble(next) > risk) {
                return between(riskOfLookingAt, safe, next);
            }
            safe = next;
        }
        return safe;
    }

    private double between(DoubleUnaryOperator riskOfLookingAt, double borne, double notBorne) {
        double safe = borne;
        double unsafe = notBorne;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (safe + unsafe) / 2;
            if (riskOfLookingAt.applyAsDouble(middle) <= risk) {
                safe = middle;
            } else {
                unsafe = middle;
            }
        }
        return safe;
    }
}
