package org.espalier.treatment;

/** A screw of a plate by where it holds. */
public enum Screw {
    METAPHYSEAL,
    EPIPHYSEAL
}
