package org.espalier.plan;

/** What is meant to be done to the fibula beside a cut of the tibia. */
public enum FibulaPlan {
    CUT,
    LEFT_WHOLE
}
