package org.espalier.prognosis;

/** Where a physis is going, or why that cannot be said. */
public sealed interface Outlook permits Forecast, Resting, Outlook.None {

    /** Nothing can be said. */
    record None(Reason reason) implements Outlook {}

    /** Why not. */
    enum Reason {
        /** Only the plates at the knee are forecast. */
        NOT_AT_THE_KNEE,
        /** Rates and growth go by sex. */
        SEX_UNKNOWN,
        /** What holds it lies in front, behind or all around: only turns to a side are forecast. */
        NOT_TO_A_SIDE,
        /** It was never held to a side, or is released from something that was not. */
        NEVER_HELD_TO_A_SIDE,
        /** Nothing holds it, and no film of the last year was read. */
        NO_RECENT_FILM,
        /** Nothing holds it, and the last film lies within reader error of the target. */
        AT_TARGET,
        /** Seen closed. */
        MATURE
    }
}
