package org.espalier.followup;

/** Where a visit stands. */
public enum VisitState {
    /** Wanted, without a date. */
    PLANNED,
    /** With a date. */
    BOOKED,
    ARRIVED,
    /** A child depends on others: it was not brought. */
    NOT_BROUGHT,
    CANCELLED,
    /** The child left care. */
    CARE_ENDED
}
