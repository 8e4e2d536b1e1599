package org.espalier.followup;

/** What a letter is for. */
public enum LetterKind {
    INVITATION,
    REMINDER,
    MISSED,
    PLEASE_CALL;

    /** Whether it tells a date that was given. */
    boolean needsDate() {
        return this == INVITATION || this == REMINDER;
    }
}
