package org.espalier.science.planning;

/**
 * Which fragment of the bone faced the film squarely when angulation was read; the place of a single cut depends on it.
 */
public enum TrueFragment {
    /** The upper fragment stood true: varus and procurvatum are read in its frame. */
    PROXIMAL,
    /** The lower fragment stood true. */
    DISTAL
}
