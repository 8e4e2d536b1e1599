package org.espalier.opinion;

import java.time.Instant;
import java.util.UUID;
import org.espalier.film.FilmCopy;
import org.jspecify.annotations.Nullable;

/**
 * A film as it is shown: a copy.
 *
 * @param photo whether it is a photo of the child and no film
 */
public record ShownFilm(
        UUID id, @Nullable Integer months, String title, boolean photo, FilmCopy copy, Instant addedAt) {}
