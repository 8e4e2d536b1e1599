package org.espalier.stock;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A movement as the database is asked for it. */
record Step(
        UUID id,
        ProductId product,
        ShelfId from,
        ShelfId to,
        @Nullable LotId lot,
        @Nullable List<LotId> lots,
        int quantity,
        @Nullable UUID holder,
        @Nullable UUID reverses,
        @Nullable String why,
        @Nullable UnitCost cost,
        Instant at) {

    static Step of(Move move, Instant at) {
        return new Step(
                move.id(),
                move.product(),
                move.from(),
                move.to(),
                move.lot().orElse(null),
                null,
                move.quantity(),
                null,
                null,
                move.why().orElse(null),
                null,
                at);
    }
}
