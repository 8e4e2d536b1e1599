package org.espalier.cost;

/** By which rule a charge follows from its fact. */
public enum ChargeRule {
    /** By the clock, where somebody recorded how long the operation took. */
    MEASURED,
    /** What every operation takes once. */
    EACH_OPERATION,
    /** What is taken for each thing done in an operation. */
    EACH_ACT,
    /** The longest stay and the most sessions of all that was done. */
    LONGEST,
    CAST_PUT_ON,
    BRACE_PUT_ON,
    /** From the day a frame was put on to the day it came off. */
    FRAME_DAYS,
    /** By what the lot cost. */
    LOT_COST,
    /** By pieces counted in the record, where the stock tells no lot. */
    PIECES_COUNTED,
    CAME,
    NOT_BROUGHT,
    FILM_TAKEN,
    MRI_REPORTED,
    LETTER_SENT,
    BY_HAND
}
