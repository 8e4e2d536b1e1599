package org.espalier.film;

import java.util.UUID;

/** Names one photo or clip of a child. */
public record PictureId(UUID value) {}
