package org.espalier.access;

/**
 * Asks a person at a screen to prove again who they are before a deed that bears their name, when their last proof is
 * long ago: somebody else may sit there by now. Signing in is a proof, the password given again is one, and so is each
 * such deed. A job, which nobody sits before, needs none.
 */
public interface SignAgain {

    /** What came of a password given again. */
    enum Answer {
        CONFIRMED,
        WRONG,
        /** Too many wrong ones: wait before the next. */
        WAIT
    }

    /** Whether the caller's last proof is too long ago. */
    boolean isNeeded();

    /** Takes the caller's password as a proof; throttled like signing in. */
    Answer confirm(String password);

    /**
     * Lets the deed pass and counts it as a proof.
     *
     * @throws org.springframework.security.access.AccessDeniedException when the last proof is too long ago
     */
    void prove();
}
