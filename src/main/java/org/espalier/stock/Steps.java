package org.espalier.stock;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Movements that follow from others. */
final class Steps {

    private Steps() {}

    /** The movement that takes another back. */
    static Step back(Movement movement, UUID id, String why, Instant at) {
        var lots = movement.lots().stream().map(Lot::id).toList();
        @Nullable LotId certain = lots.size() == 1 ? lots.getFirst() : null;
        @Nullable List<LotId> possible = lots.size() == 1 ? null : lots;
        return new Step(
                id,
                movement.product().id(),
                movement.to().id(),
                movement.from().id(),
                certain,
                possible,
                movement.quantity(),
                movement.holder().orElse(null),
                movement.id(),
                why,
                movement.cost().orElse(null),
                at);
    }
}
