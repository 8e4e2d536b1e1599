package org.espalier.treatment;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the record itself knows of a child before theatre.
 *
 * @param filmMonths how old the film may be: three months under five years, six from then on
 * @param stops why a waiting plan may not be done as it stands
 */
public record TheatreFacts(
        Optional<LocalDate> lastFilm, Optional<LocalDate> lastBoneAge, int filmMonths, List<Stop> stops) {

    private static final int YOUNG_YEARS = 5;
    private static final int MONTHS_OF_YOUNG = 3;
    private static final int MONTHS_OF_OLDER = 6;

    public TheatreFacts {
        stops = List.copyOf(stops);
    }

    static int filmMonths(int years) {
        return years < YOUNG_YEARS ? MONTHS_OF_YOUNG : MONTHS_OF_OLDER;
    }

    public boolean isFilmFresh(LocalDate today) {
        return lastFilm.filter(day -> !day.isBefore(today.minusMonths(filmMonths)))
                .isPresent();
    }
}
