package org.espalier.followup;

/**
 * How bad it is to wait longer.
 *
 * @param degrees degrees at stake by the next month, for ranking: what is not known at all stands above every number
 */
public record Harm(Kind kind, double degrees) {

    /** What the harm is. */
    public enum Kind {
        /** A plate lies there and no film was read since. */
        UNKNOWN_SINCE_PLATE,
        /** A screw was seen bent, broken or loose. */
        SCREW,
        /** The angle is expected past its target. */
        PAST_TARGET,
        /** Soon a plate can no longer reach the target. */
        WINDOW,
        /** Nothing worse than being late. */
        OVERDUE
    }

    /** Nothing worse than being late. */
    static final Harm OVERDUE = new Harm(Kind.OVERDUE, 0);
}
