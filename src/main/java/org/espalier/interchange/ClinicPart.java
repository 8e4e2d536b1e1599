package org.espalier.interchange;

import java.util.List;
import java.util.Map;

/** A part of a clinic's records that is taken and written together: one file, or two that lean on each other. */
interface ClinicPart {

    /** Takes every good row and writes down what is wrong with the others. */
    void take(Taking taking);

    /** The rows of its files as they are written, in an order that the records alone decide. */
    Map<ClinicFile, List<List<String>>> rows(Giving giving);
}
