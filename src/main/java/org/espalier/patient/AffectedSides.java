package org.espalier.patient;

/** Which limbs a diagnosis is about. */
public enum AffectedSides {
    RIGHT,
    LEFT,
    BOTH
}
