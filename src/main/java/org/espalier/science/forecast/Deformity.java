package org.espalier.science.forecast;

import org.espalier.science.quantity.Angle;

/** Which way a knee is bent, and with it which way its correction runs. */
public enum Deformity {
    /** Bowed: corrected by a lateral plate. */
    VARUS,
    /** Knocked: corrected by a medial plate. */
    VALGUS;

    /**
     * Degrees left to a target, + while still deformed, − beyond it.
     *
     * @param site whose joint angle it is: mLDFA grows with varus, mMPTA with valgus
     * @param joint the joint angle
     * @param target the angle aimed at
     */
    public double degreesLeft(PhysisSite site, Angle joint, Angle target) {
        return sign(site) * (joint.degrees() - target.degrees());
    }

    /**
     * The joint angle at which so many degrees are left, the inverse of {@link #degreesLeft}.
     *
     * @param site whose joint angle it is
     * @param degreesLeft degrees left to the target, + while still deformed
     * @param target the angle aimed at
     */
    public Angle jointAngle(PhysisSite site, double degreesLeft, Angle target) {
        return Angle.ofDegrees(target.degrees() + sign(site) * degreesLeft);
    }

    /** The one that a correction carried too far leads into. */
    public Deformity opposite() {
        return this == VARUS ? VALGUS : VARUS;
    }

    private int sign(PhysisSite site) {
        return (this == VARUS) == (site == PhysisSite.DISTAL_FEMUR) ? 1 : -1;
    }
}
