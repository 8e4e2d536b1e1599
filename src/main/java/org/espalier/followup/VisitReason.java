package org.espalier.followup;

/** Why a child was not brought or a date was given up, as the family or the hospital says. */
public enum VisitReason {
    NOT_SAID,
    FORGOTTEN,
    LETTER_NOT_UNDERSTOOD,
    LETTER_NOT_RECEIVED,
    WRONG_DATE,
    TIME_OF_DAY,
    SCHOOL,
    DISTANCE,
    COST,
    LANGUAGE,
    AFRAID,
    ILL,
    MOVED,
    HOSPITAL,
    OTHER
}
