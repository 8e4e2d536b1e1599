package org.espalier.outcomes;

/** Why a growth plate that was held is not counted. */
public enum LeftOut {
    /** Placed at another hospital, or before this record began. */
    ELSEWHERE,
    /** Not at the knee, or held in front, behind or as a whole: no angle of the frontal plane tells of it. */
    NOT_FRONTAL
}
