package org.espalier.patient;

/** How a bone age was read. Ages by different methods are not joined. */
public enum BoneAgeMethod {
    /** The whole hand and wrist beside the plates of an atlas. */
    HAND_ATLAS,
    /** Twenty regions of hand and wrist scored one by one. */
    HAND_SCORED,
    /** A few signs of hand and wrist, each with its age. */
    HAND_SHORTHAND,
    /** The elbow, by the olecranon in the years of the growth spurt. */
    ELBOW,
    /** The knee, by signs scored one by one. */
    KNEE_SCORED,
    /** The knee, by the central peak of the distal femoral physis. */
    KNEE_CENTRAL_PEAK
}
