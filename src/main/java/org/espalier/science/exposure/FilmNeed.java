package org.espalier.science.exposure;

import org.espalier.science.alignment.Quantity;

/** What a quantity needs of a film. */
enum FilmNeed {
    /** An angle of one bone and a joint surface at the knee. */
    KNEE_SURFACE,
    /** An angle at the trochanter, seen when that is bone. */
    TROCHANTER,
    /** An angle of one bone that needs no joint surface at the knee. */
    ONE_BONE,
    /** The angle of the joint surfaces. */
    JOINT,
    /** An angle of the whole limb. */
    AXIS_ANGLE,
    /** A distance from the limb's axis. */
    AXIS_DISTANCE,
    /** A part of the limb's axis, without unit. */
    AXIS_PART,
    /** A length along the limb. */
    LENGTH,
    /** A width or offset across the limb. */
    WIDTH;

    static FilmNeed of(Quantity quantity) {
        return switch (quantity) {
            case MLDFA, MMPTA, ALDFA, BONY_HKA -> KNEE_SURFACE;
            case LPFA -> TROCHANTER;
            case LDTA, MDA, FMDA, FEMUR_PHYSIS_ANGLE, TIBIA_PHYSIS_ANGLE -> ONE_BONE;
            case JLCA -> JOINT;
            case HKA, ATFA -> AXIS_ANGLE;
            case MAD -> AXIS_DISTANCE;
            case WBL -> AXIS_PART;
            case FEMUR_LENGTH, TIBIA_LENGTH, LIMB_LENGTH -> LENGTH;
            case KNEE_OFFSET, FEMUR_PHYSIS_WIDTH, TIBIA_PHYSIS_WIDTH -> WIDTH;
        };
    }

    boolean isFromTheSide() {
        return false;
    }

    boolean isFromAnywhere() {
        return false;
    }

    boolean isOfOssified() {
        return this == KNEE_SURFACE || this == TROCHANTER || this == JOINT;
    }

    boolean isShownByContrast() {
        return this != TROCHANTER;
    }

    boolean isLength() {
        return this == LENGTH;
    }

    boolean isAngle() {
        return switch (this) {
            case KNEE_SURFACE, TROCHANTER, ONE_BONE, JOINT, AXIS_ANGLE -> true;
            case AXIS_DISTANCE, AXIS_PART, LENGTH, WIDTH -> false;
        };
    }

    boolean isOfWholeLimb() {
        return this == AXIS_ANGLE || this == AXIS_DISTANCE || this == AXIS_PART;
    }

    boolean isTurnedAway() {
        return this != LENGTH;
    }
}
