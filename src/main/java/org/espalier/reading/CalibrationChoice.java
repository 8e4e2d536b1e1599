package org.espalier.reading;

/** Where a reader takes a film's scale from. */
public enum CalibrationChoice {
    /** From what the film says of itself; at the detector plane when it says no more. */
    TAGS,
    /** From a ball of known diameter shown on the film. */
    BALL,
    /** From nothing: no length is told. */
    NONE
}
