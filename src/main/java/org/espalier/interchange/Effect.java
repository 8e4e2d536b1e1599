package org.espalier.interchange;

/** What a row does. */
public enum Effect {
    /** It brings something new. */
    NEW,
    /** All of it is on record already. */
    KNOWN,
    /** It changes what is on record. */
    CHANGED
}
