package org.espalier.science.alignment;

/** An index by which infantile tibia vara is told from bowing that straightens. */
public enum TibialIndex {
    /** Metaphyseal-diaphyseal angle of the tibia, degrees, + varus. */
    MDA,
    /** Epiphyseal-metaphyseal angle, degrees. */
    EMA,
    /** {@link FemoralTibialRatio}. */
    RATIO,
    /** {@link TibialShare}, percent. */
    SHARE
}
