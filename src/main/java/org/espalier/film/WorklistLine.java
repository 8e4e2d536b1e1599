package org.espalier.film;

import java.util.List;
import org.espalier.patient.Child;

/**
 * A child of the radiographer's list.
 *
 * @param orders of the day, those still open from before first; empty when the child comes and nothing was said of
 *     films
 * @param expected whether the child has an appointment on the day
 * @param films taken so far and kept here
 */
public record WorklistLine(Child child, List<FilmOrder> orders, boolean expected, long films) {

    public WorklistLine {
        orders = List.copyOf(orders);
    }
}
