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
    /** A width, an offset or a small distance. */
    WIDTH,
    /** An angle seen from the side. */
    SIDE_VIEW;

    static FilmNeed of(Quantity quantity) {
        return switch (quantity) {
            case MLDFA, MMPTA, ALDFA, BONY_HKA, MEDIAL_PLATEAU_SLOPE, LATERAL_PLATEAU_SLOPE, PLATEAU_DEPRESSION ->
                KNEE_SURFACE;
            case LPFA -> TROCHANTER;
            case LDTA,
                    MDA,
                    MDA_CORTEX,
                    EMA,
                    AMA,
                    FMDA,
                    FEMUR_PHYSIS_ANGLE,
                    TIBIA_PHYSIS_ANGLE,
                    FEMUR_SCREW_ANGLE,
                    TIBIA_SCREW_ANGLE -> ONE_BONE;
            case JLCA -> JOINT;
            case HKA, ATFA -> AXIS_ANGLE;
            case MAD -> AXIS_DISTANCE;
            case WBL -> AXIS_PART;
            case FEMUR_LENGTH, TIBIA_LENGTH, LIMB_LENGTH, FEMUR_FILM_LENGTH, TIBIA_FILM_LENGTH, LIMB_FILM_LENGTH ->
                LENGTH;
            case KNEE_OFFSET,
                    FEMUR_PHYSIS_WIDTH,
                    TIBIA_PHYSIS_WIDTH,
                    PATELLA_POSITION,
                    FIBULA_POSITION,
                    FEMUR_METAPHYSIS_SCREW_EXPOSED,
                    FEMUR_EPIPHYSIS_SCREW_EXPOSED,
                    TIBIA_METAPHYSIS_SCREW_EXPOSED,
                    TIBIA_EPIPHYSIS_SCREW_EXPOSED,
                    FEMUR_PLATE_LENGTH,
                    TIBIA_PLATE_LENGTH -> WIDTH;
            case PDFA, PPTA, ADTA, FEMUR_PROCURVATUM, TIBIA_PROCURVATUM, KNEE_FLEXION -> SIDE_VIEW;
        };
    }

    boolean isFromTheSide() {
        return this == SIDE_VIEW;
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
            case KNEE_SURFACE, TROCHANTER, ONE_BONE, JOINT, AXIS_ANGLE, SIDE_VIEW -> true;
            case AXIS_DISTANCE, AXIS_PART, LENGTH, WIDTH -> false;
        };
    }

    boolean isOfWholeLimb() {
        return this == AXIS_ANGLE || this == AXIS_DISTANCE || this == AXIS_PART;
    }

    boolean isTurnedAway() {
        return this != LENGTH && this != SIDE_VIEW;
    }
}
