package org.espalier.interchange;

/** How much of a folder is taken. */
public enum Portion {
    /** Everything, and nothing while a row is bad. */
    ALL,
    /** The good rows, although others are bad. */
    GOOD_ROWS
}
