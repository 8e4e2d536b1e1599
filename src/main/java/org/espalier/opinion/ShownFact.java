package org.espalier.opinion;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A fact as it is shown, frozen. */
public record ShownFact(UUID id, FactKind kind, @Nullable Integer months, FactSheet sheet, Instant addedAt) {}
