package org.espalier.science.forecast;

/**
 * When to look again at a growth plate under a tether: the latest time at which waiting for an operation from then on
 * still leaves little chance of lying too far past the target.
 *
 * @param tolerance how far past the target is too far, in degrees, 0 or more
 * @param risk the chance of it that is taken, above 0 and below 1
 * @param delay months from look to theatre, 0 or more
 * @param longest months until the next look at most, above 0
 */
public record LookRule(double tolerance, double risk, double delay, double longest) {

    private static final double STEP = 0.25;
    private static final int HALVINGS = 12;

    /**
     * Checks the limits.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public LookRule {
        if (!(tolerance >= 0) || !(risk > 0 && risk < 1) || !(delay >= 0) || !(longest > 0)) {
            throw new IllegalArgumentException("A rule for the next look cannot have tolerance " + tolerance + ", risk "
                    + risk + ", delay " + delay + ", longest " + longest);
        }
    }

    /**
     * What waiting from a look would risk.
     *
     * @param forecast the growth plate's forecast
     * @param look months since the plate at which it is looked at
     * @return the chance of lying too far past the target when the wait is over, 0 to 1
     */
    public double riskOf(TetherForecast forecast, double look) {
        return forecast.degreesLeft(look + delay).below(-tolerance);
    }

    /**
     * The latest time of the next look.
     *
     * @param forecast the growth plate's forecast
     * @param today months since the plate from which the next look is counted
     * @return months since the plate, from today to the longest interval after it; today means that it is due at once
     */
    public double latest(TetherForecast forecast, double today) {
        double end = today + longest;
        double safe = today;
        while (safe < end && riskOf(forecast, Math.min(end, safe + STEP)) <= risk) {
            safe = Math.min(end, safe + STEP);
        }
        if (safe >= end || (safe == today && riskOf(forecast, today) > risk)) {
            return Math.min(safe, end);
        }
        double unsafe = Math.min(end, safe + STEP);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (safe + unsafe) / 2;
            if (riskOf(forecast, middle) <= risk) {
                safe = middle;
            } else {
                unsafe = middle;
            }
        }
        return safe;
    }
}
