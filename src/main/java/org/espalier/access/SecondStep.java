package org.espalier.access;

import java.util.Optional;

/** What somebody who gave their password must still do before they are in; a passkey leaves nothing to do. */
public interface SecondStep {

    /** What is left to do. */
    enum Kind {
        /** Give a code, or a recovery code. */
        CODE,
        /** Sign in by the passkey instead. */
        PASSKEY,
        /** Set up codes, as the hospital asks. */
        SET_UP
    }

    /** What came of a code. */
    enum Answer {
        CONFIRMED,
        WRONG,
        /** Too many wrong ones: wait before the next. */
        WAIT
    }

    /** What the caller must still do; empty for whoever is in. */
    Optional<Kind> left();

    /** Takes a code or a recovery code, throttled like signing in; the right one lets the caller in. */
    Answer give(String code);

    /** Takes the first code of what was set up; the right one lets the caller in and tells the recovery codes. */
    Optional<RecoveryCodes> setUp(String code);
}
