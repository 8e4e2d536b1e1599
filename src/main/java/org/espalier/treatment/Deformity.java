package org.espalier.treatment;

/** What a tether is to correct. */
public enum Deformity {
    VARUS,
    VALGUS,
    FLEXION,
    RECURVATUM,
    OVERLENGTH
}
