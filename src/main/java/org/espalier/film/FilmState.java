package org.espalier.film;

/** How far a film has come. */
public enum FilmState {
    /** Kept safely; its picture is still being prepared. */
    RECEIVED,
    /** Its picture can be shown. */
    READY,
    /** Kept safely, but its picture cannot be shown; the film says why. */
    KEPT_ASIDE
}
