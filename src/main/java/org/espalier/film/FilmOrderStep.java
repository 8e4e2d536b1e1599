package org.espalier.film;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What happened to an order, as it was written down.
 *
 * @param by name of who wrote it down; null for the house itself
 */
public record FilmOrderStep(FilmHappening what, @Nullable String by, Instant at) {}
