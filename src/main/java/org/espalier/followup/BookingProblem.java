package org.espalier.followup;

/** Why a row of the booking system's file is not taken. */
public enum BookingProblem {
    /** The heading lacks a column. */
    COLUMNS,
    /** A quotation mark has no partner: nothing after it can be read. */
    QUOTES,
    NOTHING_IN_A_CELL,
    /** The cell begins like a formula of a spreadsheet program. */
    FORMULA,
    DATE,
    TIME,
    OUTCOME,
    /** No child of the hospital has the number. */
    UNKNOWN_NUMBER,
    /** What became of a day to come cannot be known. */
    OUTCOME_TO_COME,
    NOT_IN_CARE,
    /** The booking is another child's. */
    OTHER_CHILD
}
