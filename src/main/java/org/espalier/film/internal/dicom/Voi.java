package org.espalier.film.internal.dicom;

/** A choice of values of interest: how values after the modality step become light (PS3.3 section C.11.2). */
public sealed interface Voi permits Window, VoiTable {

    /**
     * @param value a value after the modality step
     * @return the light, 0 black to 1 white for MONOCHROME2
     */
    double light(double value);

    /** What the sender calls it; empty when it has no name. */
    String explanation();
}
