package org.espalier.film;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What a film says about whom it shows and why it was taken; null where it says nothing. */
public record FilmLabel(
        @Nullable String patientName,
        @Nullable String localNumber,
        @Nullable LocalDate birthDate,
        @Nullable String sex,
        @Nullable String accessionNumber,
        @Nullable String studyDescription,
        @Nullable String seriesDescription) {

    static final FilmLabel BLANK = new FilmLabel(null, null, null, null, null, null, null);
}
