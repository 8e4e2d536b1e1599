package org.espalier.opinion;

import java.time.Instant;
import java.util.Comparator;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A fact as it is shown, frozen. */
public record ShownFact(UUID id, FactKind kind, @Nullable Integer months, FactSheet sheet, Instant addedAt) {

    /** Kind by kind, the earliest month first, what has no month last. */
    static final Comparator<ShownFact> IN_ORDER = Comparator.comparing(ShownFact::kind)
            .thenComparingInt(fact -> fact.months == null ? Integer.MAX_VALUE : fact.months)
            .thenComparing(fact -> fact.sheet.heading());
}
