package org.espalier.patient;

/** Why a bone age is asked for. */
public enum BoneAgeNeed {
    /** Heavy and old enough, and no bone age was ever read. */
    MISSING,
    /** Heavy and old enough, and the last bone age is older than six months. */
    OLD,
    /** Old enough, and no height and weight of the last twelve months tell whether heavy. */
    SIZE_UNKNOWN
}
