package org.espalier.followup;

/** Where a growth plate stands, as far as the rules of looking again tell apart. */
public enum Following {
    WATCHED,
    BRACED,
    PLANNED,
    /** A plate and both its screws hold. */
    TETHERED,
    /** The metaphyseal screw is out, the plate is left. */
    PARKED,
    RELEASED,
    MATURE;

    /** Whether nothing is decided yet. */
    boolean isUndecided() {
        return this == WATCHED || this == BRACED;
    }

    /** Whether metal lies beside the growth plate. */
    boolean hasPlate() {
        return this == TETHERED || this == PARKED;
    }
}
