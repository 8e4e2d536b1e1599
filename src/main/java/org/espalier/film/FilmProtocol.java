package org.espalier.film;

/** Which film is to be taken. */
public enum FilmProtocol {
    /** Both legs from hip to ankle, standing. */
    LONG_STANDING,
    /** Each leg on a film of its own, standing: for a child too wide for one cassette. */
    LONG_STANDING_EACH,
    /** Both legs from hip to ankle, lying: for a child who cannot stand. */
    LONG_SUPINE,
    KNEE_FRONTAL,
    KNEE_LATERAL,
    /** Hand and wrist, for bone age. */
    HAND,
    /** Elbow from the side, for bone age. */
    ELBOW;
}
