package org.espalier.opinion;

/** A kind of fact that is shown to colleagues. */
public enum FactKind {
    CHILD,
    DIAGNOSIS,
    EXAMINATION,
    BODY_SIZE,
    BONE_AGE,
    LABORATORY,
    IMAGING,
    READING,
    PROCEDURE,
    PLAN,
    COMPARISON,
    FORECAST
}
