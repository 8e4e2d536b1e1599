package org.espalier.patient;

import org.espalier.science.quantity.Angle;

/** An angle measured on a leg by hand and eye, in whole degrees, with the limits outside which it was mistyped. */
public enum LegAngle {
    /** What the knee lacks to be straight; below zero it goes beyond straight. */
    KNEE_EXTENSION_LACK(-30, 90, true),
    /** How far the knee bends from straight. */
    KNEE_FLEXION(0, 170, false),
    /** Of the foot to the line of walking; positive outward. */
    FOOT_PROGRESSION(-60, 60, true),
    /** Of the hip, lying prone. */
    HIP_INTERNAL_ROTATION(0, 100, false),
    /** Of the hip, lying prone. */
    HIP_EXTERNAL_ROTATION(0, 100, false),
    /** Of the foot to the thigh, lying prone with the knee bent; positive outward. */
    THIGH_FOOT(-60, 70, true);

    private final int least;
    private final int most;
    private final boolean directed;

    LegAngle(int least, int most, boolean directed) {
        this.least = least;
        this.most = most;
        this.directed = directed;
    }

    /** Whether the angle goes in either of two directions, which stands beside it in words. */
    public boolean isDirected() {
        return directed;
    }

    /** The smallest that is taken, in degrees. */
    public int least() {
        return least;
    }

    /** The greatest that is taken, in degrees. */
    public int most() {
        return most;
    }

    /** Whether a leg can have it. */
    public boolean isPlausible(Angle angle) {
        return angle.degrees() >= least && angle.degrees() <= most && angle.degrees() == Math.rint(angle.degrees());
    }
}
