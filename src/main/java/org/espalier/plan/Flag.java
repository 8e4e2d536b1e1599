package org.espalier.plan;

/** Something that speaks to an option and is pointed out beside it, with its source. */
public enum Flag {
    /** Body mass index of 35 and more. */
    HEAVY,
    /** Past the age after which plates failed more often in late tibia vara. */
    LATE_FOR_PLATE,
    STAGE_THREE_AND_OVER,
    FEMUR_VARUS,
    /** The diagnosis has no rates of its own. */
    CAUSE_NOT_STUDIED,
    WINDOW_CLOSED,
    WINDOW_UNKNOWN,
    BEFORE_FOURTH_BIRTHDAY,
    SCREW_BROKEN,
    BAR,
    DYSPLASIA,
    UNDER_EIGHT,
    /** A frontal plate is no treatment of torsion. */
    TORSION_LEFT,
    FALLS_BEHIND,
    ANAESTHETIC_AND_CUT
}
