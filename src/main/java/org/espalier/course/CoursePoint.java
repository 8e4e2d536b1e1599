package org.espalier.course;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.film.FilmId;
import org.espalier.reading.Change;
import org.espalier.reading.Reading;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;

/**
 * One quantity of one limb on one film, by the latest reading that stands.
 *
 * @param doubtful whether the knee was so flexed that the value says little of the bones
 * @param since against the film before, read in the same way; empty for the first
 */
public record CoursePoint(
        Side side,
        Quantity quantity,
        LocalDate day,
        FilmId film,
        Reading reading,
        double value,
        boolean doubtful,
        Optional<Since> since) {

    /**
     * The change since the film before.
     *
     * @param from the day of the film before
     */
    public record Since(LocalDate from, Change change) {}

    /** Whether nothing measurable became of it since the film before. */
    public boolean isUnchanged() {
        return since.filter(before -> before.change().isUnmeasurable()).isPresent();
    }
}
