package org.espalier.followup;

/** Why a visit was opened. */
public enum OpenedFor {
    REGISTERED,
    NEXT_LOOK,
    NOT_BROUGHT,
    CANCELLED,
    PROCEDURE,
    CARE_RESUMED,
    /** The child was in care before visits were kept. */
    ON_RECORD
}
