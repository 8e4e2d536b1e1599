package org.espalier.science.quantity;

/** The sex a printed table of growth is asked for. */
public enum Sex {
    /** Girls' tables. */
    FEMALE,
    /** Boys' tables. */
    MALE
}
