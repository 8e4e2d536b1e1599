package org.espalier.plan;

/**
 * What can be done about a limb, in the order in which it always stands: by how much it takes, not by how good it is.
 */
public enum Option {
    WATCH,
    MEDICAL_FIRST,
    BRACE,
    PLATE_FEMUR,
    PLATE_TIBIA,
    PLATE_BOTH,
    /** The other physis of a knee of which one is held already. */
    ADD_PHYSIS,
    EXCHANGE_SCREW,
    TAKE_OUT_NOW,
    TAKE_OUT_AT_TARGET,
    /** One screw out, the plate left in. */
    TAKE_OUT_SCREW,
    /** After overcorrection: out, and wait for what comes back. */
    RELEASE_AND_WAIT,
    /** After overcorrection: to the other side of the bone. */
    MOVE_SIDE,
    /** A bar resected, and a tether. */
    RESECT_BAR,
    OSTEOTOMY,
    PLATEAU_ELEVATION,
    GRADUAL_CORRECTION,
    DEROTATE_AT_REMOVAL
}
