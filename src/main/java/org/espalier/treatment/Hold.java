package org.espalier.treatment;

/** Whether what is in place holds the physis. */
public enum Hold {
    HOLDS,
    METAPHYSEAL_SCREW_OUT,
    EPIPHYSEAL_SCREW_OUT,
    BOTH_SCREWS_OUT,
    /** A screw or the plate was seen broken: it may hold or not. */
    BROKEN
}
