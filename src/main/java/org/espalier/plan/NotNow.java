package org.espalier.plan;

/** Why an option does not stand in the table today. */
public enum NotNow {
    NO_BONE_DISEASE,
    OLDER_THAN_BRACED,
    NOTHING_IN,
    HELD_ALREADY,
    NOT_ONE_OF_TWO_HELD,
    AT_TARGET,
    NO_RECENT_FILM,
    TARGET_NOT_FORESEEN,
    NOT_PAST_TARGET,
    NO_BAR_REPORTED,
    NO_DEPRESSION_REPORTED,
    MATURE,
    SEX_UNKNOWN
}
