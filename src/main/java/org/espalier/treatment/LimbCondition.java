package org.espalier.treatment;

/** What is said of a limb beside the states of its physes. */
public enum LimbCondition {
    IN_CAST,
    IN_FRAME,
    /** Handed over to another hospital. */
    TRANSFERRED,
    /** Care has ended, for a reason. */
    ENDED
}
