package org.espalier.film;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a film says about itself, made safe to keep: no control characters, no overlong text. What it does not say is
 * null.
 */
record FilmTags(
        @Nullable String transferSyntax,
        @Nullable String sopClass,
        @Nullable String sopInstance,
        @Nullable String study,
        @Nullable String series,
        @Nullable String modality,
        @Nullable String view,
        @Nullable LocalDate studyDate,
        @Nullable LocalDate takenOn,
        FilmScale scale,
        FilmLabel label) {

    static final FilmTags NONE =
            new FilmTags(null, null, null, null, null, null, null, null, null, FilmScale.NONE, FilmLabel.BLANK);

    static FilmTags ofPhoto(@Nullable LocalDate takenOn) {
        return new FilmTags(null, null, null, null, null, "XC", null, null, takenOn, FilmScale.NONE, FilmLabel.BLANK);
    }
}
