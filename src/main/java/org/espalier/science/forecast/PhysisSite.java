package org.espalier.science.forecast;

/** The growth plates of the knee that are forecast. */
public enum PhysisSite {
    /** The lower end of the femur; its angle is mLDFA. */
    DISTAL_FEMUR,
    /** The upper end of the tibia; its angle is mMPTA. */
    PROXIMAL_TIBIA
}
