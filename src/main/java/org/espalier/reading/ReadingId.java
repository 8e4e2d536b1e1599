package org.espalier.reading;

import java.util.UUID;

/** Names one reading, from its first draft on: a signed reading keeps the name of the draft it was signed from. */
public record ReadingId(UUID value) {}
