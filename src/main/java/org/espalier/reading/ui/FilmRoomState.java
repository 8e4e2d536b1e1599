package org.espalier.reading.ui;

import java.util.List;
import java.util.Optional;
import org.espalier.film.Film;
import org.espalier.patient.Child;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingDraft;
import org.espalier.reading.TwoReaders;

/**
 * A film room as it was opened.
 *
 * @param child whose film it is; empty while it lies in the tray
 * @param mayRead whether the caller may read this film
 * @param draft the caller's reading in the making, when that is shown
 * @param shown the signed reading that is shown
 * @param sameDay other films of the child of the same day, such as that of the other limb
 * @param signed every signed reading of the film, the newest first
 */
record FilmRoomState(
        Film film,
        Optional<Child> child,
        boolean mayRead,
        Optional<ReadingDraft> draft,
        Optional<Reading> shown,
        List<Reading> signed,
        List<Film> sameDay) {

    /** Whether the reading shown was signed for another child, before the film was moved. */
    boolean isMoved() {
        return shown.filter(reading ->
                        film.child().isPresent() && !film.child().orElseThrow().equals(reading.child()))
                .isPresent();
    }

    Optional<TwoReaders> twoReaders() {
        return TwoReaders.among(signed);
    }

    /** Whether the signed reading shown may be superseded. */
    boolean mayCorrect() {
        return mayRead && shown.filter(reading -> !reading.isSuperseded()).isPresent();
    }
}
