package org.espalier.opinion;

import java.time.Instant;
import java.util.UUID;
import org.espalier.film.FilmCopy;
import org.jspecify.annotations.Nullable;

/** A film as it is shown: a copy. */
public record ShownFilm(UUID id, @Nullable Integer months, String title, FilmCopy copy, Instant addedAt) {}
