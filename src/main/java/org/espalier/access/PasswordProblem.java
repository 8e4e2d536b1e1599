package org.espalier.access;

/** Why a password is not taken. */
public enum PasswordProblem {
    /** The current password was typed wrongly. */
    CURRENT_WRONG,
    /** The new one is the current one. */
    UNCHANGED,
    TOO_SHORT,
    TOO_LONG,
    /** It is on the list of common passwords, or one of them with digits or signs around it. */
    COMMON,
    /** It holds the person's own name or login. */
    OWN_NAME
}
