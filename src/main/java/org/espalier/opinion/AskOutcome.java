package org.espalier.opinion;

/** What came of asking. */
public sealed interface AskOutcome {

    /** It is asked. */
    record Asked(ThreadId thread) implements AskOutcome {}

    /** It was not, and why. */
    record Refused(Reason reason) implements AskOutcome {}

    /** Why something is not sent. */
    enum Reason {
        NOBODY_ASKED,
        NAMES_THE_CHILD,
        DUE_IN_THE_PAST,
        ENDS_BEFORE_DUE,
        NOTHING_SHOWN,
        CLIP_NOT_UNDERSTOOD,
        CLOSED
    }
}
