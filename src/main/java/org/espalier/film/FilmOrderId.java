package org.espalier.film;

import java.util.UUID;

/** Names one order of a film. */
public record FilmOrderId(UUID value) {}
