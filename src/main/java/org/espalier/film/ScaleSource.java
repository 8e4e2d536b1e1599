package org.espalier.film;

/** Where the millimetres of a film's own tags hold (PS3.3 section 10.7). */
public enum ScaleSource {
    /** The film says nothing usable. */
    NONE,
    /** At the detector; bones appear enlarged. */
    DETECTOR_PLANE,
    /** The film does not say where; taken as at the detector. */
    UNDETERMINED,
    /** In the patient, by known or assumed geometry. */
    GEOMETRY,
    /** In the patient, by an object of known size. */
    FIDUCIAL,
    /** In the patient; how is not said. */
    UNSTATED
}
