package org.espalier.outcomes;

/** What is known of a growth plate two years after it was let go. */
public enum After {
    /** Not let go by a film, or two and a half years are not over. */
    NOT_DUE,
    /** A film from one and a half to two and a half years after tells. */
    FILMED,
    NOT_FILMED,
    /** Held again before such a film. */
    HELD_AGAIN;

    /** Further back than this towards the deformity it has drifted. */
    public static final double DRIFT_DEGREES = 5;
}
