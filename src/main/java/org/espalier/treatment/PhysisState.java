package org.espalier.treatment;

/** Where a physis stands; the most urgent first. */
public enum PhysisState {
    /** Something holds: plate and both screws, staple, transphyseal screw, or a permanent arrest. */
    TETHERED,
    /** A plate was left in, and a screw of it is out or broken: it may go on tethering. */
    PARKED,
    /** An operation is decided on. */
    PLANNED,
    /** Nothing holds any more: watched for rebound. */
    RELEASED,
    /** The limb is in a brace. */
    BRACED,
    WATCHED,
    /** Seen closed on a dated film by a named reader. */
    MATURE;

    /** Whether something is in that may turn the bone. */
    public boolean hasTether() {
        return this == TETHERED || this == PARKED;
    }
}
