package org.espalier.film;

import java.util.UUID;

/** Names a film of the network. */
public record FilmId(UUID value) {}
