package org.espalier.cost;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Side;

/**
 * The care of one limb at one hospital, from the first plan, or what was done before any, to the end of care. What is
 * done again belongs to it.
 *
 * @param began the day of the first plan or procedure; of a limb only watched, of the first visit
 * @param ended empty while the limb is in care
 * @param operations how often the child came to theatre for it, repeats counted
 * @param elsewhere whether a part was done at another hospital, so that its cost is not whole
 * @param ageYears the child's age when it began, in whole years
 * @param degrees by how much the growth plates at the knee came nearer to their targets; empty when no films tell
 * @param onTarget whether all that were off their target at the beginning are within reader error of it; empty likewise
 */
public record Episode(
        ChildId child,
        Side side,
        LocalDate began,
        Optional<LocalDate> ended,
        Pathway pathway,
        int operations,
        boolean elsewhere,
        DiagnosisGroup diagnosis,
        int ageYears,
        OptionalDouble degrees,
        Optional<Boolean> onTarget) {

    public boolean isOpen() {
        return ended.isEmpty();
    }

    /** Operations after the first. */
    public int repeats() {
        return Math.max(0, operations - 1);
    }

    boolean holds(LocalDate day) {
        return !day.isBefore(began) && ended.filter(day::isAfter).isEmpty();
    }
}
