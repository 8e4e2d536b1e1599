package org.espalier.film;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.jspecify.annotations.Nullable;

/**
 * A film that was asked for, or that none is needed.
 *
 * @param by name of who asked; null for the house itself
 * @param steps what happened to it, the first first
 */
public record FilmOrder(
        FilmOrderId id,
        SiteId site,
        ChildId child,
        LocalDate askedOn,
        LocalDate forDay,
        FilmWish wish,
        @Nullable String by,
        List<FilmOrderStep> steps) {

    public FilmOrder {
        steps = List.copyOf(steps);
    }

    /** How it ended; empty while it is still to be done. */
    public Optional<FilmOrderStep> end() {
        return steps.stream().filter(step -> step.what().isEnd()).findFirst();
    }

    /** Whether a film is still to be taken. */
    public boolean isOpen() {
        return wish instanceof FilmWish.Film && end().isEmpty();
    }
}
