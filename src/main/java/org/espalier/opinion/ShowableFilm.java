package org.espalier.opinion;

import org.espalier.film.Film;
import org.jspecify.annotations.Nullable;

/** A film that can be shown, and how many months after the child's first one it was taken. */
public record ShowableFilm(Film film, @Nullable Integer months) {}
