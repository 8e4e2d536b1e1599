package org.espalier.reading;

import java.util.UUID;

/** A reading was signed; told in the same transaction. Ids only: it may be kept. */
public record ReadingSigned(UUID site, UUID child, UUID film, ReadingId reading) {}
