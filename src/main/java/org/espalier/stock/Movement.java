package org.espalier.stock;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Pieces that were carried from one shelf to another.
 *
 * @param lots the lot, or the lots it may be
 * @param holder for whom they were used, by an id that means nothing here
 * @param reverses the movement that this one takes back
 * @param reversed whether another took this one back
 * @param by who wrote it down; empty for a job of the house
 */
public record Movement(
        UUID id,
        Product product,
        List<Lot> lots,
        int quantity,
        Shelf from,
        Shelf to,
        Optional<UUID> holder,
        Optional<UUID> reverses,
        boolean reversed,
        Optional<String> why,
        Optional<UnitCost> cost,
        Optional<String> by,
        Instant at) {

    public Movement {
        lots = List.copyOf(lots);
    }
}
