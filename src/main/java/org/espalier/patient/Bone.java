package org.espalier.patient;

/** A long bone of the leg. */
public enum Bone {
    FEMUR,
    TIBIA,
    FIBULA
}
