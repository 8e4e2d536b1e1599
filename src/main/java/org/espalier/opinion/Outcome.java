package org.espalier.opinion;

/**
 * What came of it.
 *
 * @param months after closing, whole
 */
public record Outcome(Horizon horizon, Advice done, Result result, String text, int months) {

    /** When it is asked. */
    public enum Horizon {
        YEAR,
        MATURITY
    }

    /** How the limb is. */
    public enum Result {
        STRAIGHT,
        BETTER,
        UNCHANGED,
        WORSE,
        PAST_TARGET
    }
}
