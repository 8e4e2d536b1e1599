package org.espalier.followup;

/** Why no letter is written. */
public enum LetterRefusal {
    /** Nobody writes to the family of a child that has died. */
    DIED,
    NOT_IN_CARE,
    DO_NOT_CONTACT,
    /** A letter without a number to call helps nobody. */
    NO_LETTERHEAD,
    /** An invitation needs a date. */
    NO_DATE,
    /** There is nothing in of which a card could tell. */
    NOTHING_IN,
    /** Who may not know the name cannot write. */
    NO_NAME
}
