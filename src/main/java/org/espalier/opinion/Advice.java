package org.espalier.opinion;

/** What is asked about a limb, advised for it, decided and done. */
public enum Advice {
    WATCH,
    PLATE,
    CUT,
    WAIT,
    DIAGNOSIS,
    OTHER
}
