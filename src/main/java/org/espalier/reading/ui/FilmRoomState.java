package org.espalier.reading.ui;

import java.util.List;
import java.util.Optional;
import org.espalier.film.Film;
import org.espalier.patient.Child;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingDraft;

/**
 * A film room as it was opened.
 *
 * @param child whose film it is; empty while it lies in the tray
 * @param mayRead whether the caller may read this film
 * @param draft the caller's reading in the making, when that is shown
 * @param shown the signed reading that is shown
 * @param signed every signed reading of the film, the newest first
 */
record FilmRoomState(
        Film film,
        Optional<Child> child,
        boolean mayRead,
        Optional<ReadingDraft> draft,
        Optional<Reading> shown,
        List<Reading> signed) {

    /** Whether the signed reading shown may be superseded. */
    boolean mayCorrect() {
        return mayRead && shown.filter(reading -> !reading.isSuperseded()).isPresent();
    }
}
