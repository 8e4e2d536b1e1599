package org.espalier.plan;

import java.util.OptionalInt;

/**
 * What an option takes, counted by common practice: a visit about every three months while something holds, half-yearly
 * for two years after removal.
 *
 * @param anaesthetics those that are planned from the start
 * @param months until the target is as likely reached as not; empty where no day is foreseen
 */
public record Takes(int anaesthetics, OptionalInt months) {

    private static final int MONTHS_BETWEEN_VISITS = 3;
    private static final int VISITS_AFTER_RELEASE = 4;

    /** Visits until the target, the wound's own included where there is a wound; empty where no day is foreseen. */
    public OptionalInt visits() {
        return months.isPresent()
                ? OptionalInt.of(Math.ceilDiv(months.getAsInt(), MONTHS_BETWEEN_VISITS) + Math.min(anaesthetics, 1))
                : OptionalInt.empty();
    }

    /** Films until the target: at most one each visit but the wound's. */
    public OptionalInt films() {
        return months.isPresent()
                ? OptionalInt.of(Math.ceilDiv(months.getAsInt(), MONTHS_BETWEEN_VISITS))
                : OptionalInt.empty();
    }

    /** Visits in the two years after removal. */
    public int visitsAfter() {
        return VISITS_AFTER_RELEASE;
    }
}
