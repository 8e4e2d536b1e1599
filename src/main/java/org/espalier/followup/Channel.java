package org.espalier.followup;

/** A way to a family, the gentlest first: the order in which the next step is proposed. */
public enum Channel {
    CALL,
    MESSAGE,
    LETTER,
    RELATIVE,
    SCHOOL,
    HOME_VISIT,
    SAFEGUARDING_LEAD;

    /** Whether somebody must have agreed before this way is gone. */
    public boolean needsConsent() {
        return this == RELATIVE || this == SCHOOL || this == HOME_VISIT;
    }
}
