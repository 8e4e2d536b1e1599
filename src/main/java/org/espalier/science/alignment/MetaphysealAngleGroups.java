package org.espalier.science.alignment;

import org.espalier.science.statistics.NormalDistribution;

/**
 * The metaphyseal-diaphyseal angle in bowed legs that straightened and in infantile tibia vara, drawn as normal curves.
 *
 * <p>Physiological 9 ± 3.9 degrees (179 limbs of 106 children), tibia vara 19 ± 5.7 (32 limbs of 19). Source: Feldman
 * and Schoenecker, J Bone Joint Surg Am 1993;75:1602 (read). Error: curves describe the groups only roughly: 37 % of
 * the physiological limbs lay at or above 11 degrees, the curve says 30 %. The angle alone does not decide treatment.
 */
public final class MetaphysealAngleGroups {

    /** Bowed legs that straightened. */
    public static final NormalDistribution PHYSIOLOGICAL = new NormalDistribution(9, 3.9);

    /** Infantile tibia vara. */
    public static final NormalDistribution TIBIA_VARA = new NormalDistribution(19, 5.7);

    private static final double GREY_FROM = 9;
    private static final double GREY_TO = 16;

    private MetaphysealAngleGroups() {}

    /** Where an angle lies between both groups. */
    public enum Zone {
        /** At or below 9 degrees: fewer than 5 % of tibia vara. */
        BELOW_GREY,
        /** Between 9 and 16 degrees: more than 5 % of calls either way are wrong. */
        GREY,
        /** At or above 16 degrees: fewer than 5 % of physiological bows. */
        ABOVE_GREY
    }

    /**
     * How many times likelier exactly this angle is in tibia vara than in a bow that straightens, by both curves:
     * derived, not printed.
     *
     * @return above 0
     */
    public static double likelihoodRatio(double degrees) {
        return TIBIA_VARA.density(degrees) / PHYSIOLOGICAL.density(degrees);
    }

    /** The zone of an angle in degrees. */
    public static Zone zone(double degrees) {
        if (degrees <= GREY_FROM) {
            return Zone.BELOW_GREY;
        }
        return degrees < GREY_TO ? Zone.GREY : Zone.ABOVE_GREY;
    }
}
