package org.espalier.prognosis.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The days for which angles are shown.
 *
 * @param also a day that was asked for; it counts even when growth has ended by then
 */
record ShownDays(LocalDate today, Optional<LocalDate> also) {

    private static final List<Integer> MONTHS = List.of(0, 3, 6, 12);

    /** In their order; the usual ones only until growth ends. */
    List<LocalDate> until(LocalDate end) {
        return Stream.concat(MONTHS.stream().map(today::plusMonths).filter(day -> !day.isAfter(end)), also.stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** All of them, in their order. */
    List<LocalDate> all() {
        return until(LocalDate.MAX);
    }
}
