package org.espalier.access.internal;

import java.time.Duration;
import java.time.Instant;

/**
 * What one caller may still ask: a store that fills at a steady pace up to its brim and from which each request takes.
 */
final class Allowance {

    private final double perSecond;
    private final double brim;
    private double left;
    private Instant at;
    private boolean empty;

    Allowance(int perSecond, int brim, Instant at) {
        this.perSecond = perSecond;
        this.brim = brim;
        this.left = brim;
        this.at = at;
    }

    /** What came of asking. */
    enum Answer {
        GRANTED,
        /** Refused for the first time since there was plenty. */
        RAN_OUT,
        REFUSED
    }

    synchronized Answer take(int cost, Instant now) {
        double passed = Math.max(0, Duration.between(at, now).toNanos() / 1e9);
        left = Math.min(brim, left + passed * perSecond);
        at = now.isAfter(at) ? now : at;
        if (left >= cost) {
            left -= cost;
            empty &= left < brim / 2;
            return Answer.GRANTED;
        }
        var answer = empty ? Answer.REFUSED : Answer.RAN_OUT;
        empty = true;
        return answer;
    }
}
