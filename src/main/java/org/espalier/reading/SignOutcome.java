package org.espalier.reading;

/** What comes of signing. */
public sealed interface SignOutcome {

    /** Signed now, or already by an earlier try with the same draft. */
    record Signed(ReadingId reading) implements SignOutcome {}

    /** Not signed; nothing is changed. */
    record Refused(Reason reason) implements SignOutcome {}

    /** Why a reading cannot be signed. */
    enum Reason {
        /** There is no such draft of the caller. */
        NO_DRAFT,
        /** The draft has changed since what the reader saw. */
        CHANGED_SINCE,
        /** No quantity has a value yet. */
        NO_NUMBERS,
        /** The landmarks contradict themselves. */
        IMPOSSIBLE_GEOMETRY,
        /** The film lies in the tray: whose it is must be known first. */
        FILM_WITHOUT_CHILD,
        /** A reading is superseded only with a reason. */
        REASON_MISSING,
        /** Another reading has superseded it meanwhile. */
        SUPERSEDED_MEANWHILE
    }
}
