package org.espalier.opinion;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A fact that can be shown.
 *
 * @param source what it is made from
 * @param months since the child's first film; null for what belongs to no day
 */
public record ShowableFact(
        UUID source, FactKind kind, @Nullable Integer months, FactSheet sheet) {}
