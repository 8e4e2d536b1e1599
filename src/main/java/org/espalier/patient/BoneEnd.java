package org.espalier.patient;

/** The end of a bone at which a growth plate lies. */
public enum BoneEnd {
    PROXIMAL,
    DISTAL
}
