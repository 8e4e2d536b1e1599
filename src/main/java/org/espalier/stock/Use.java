package org.espalier.stock;

import java.util.Optional;
import java.util.UUID;

/**
 * Pieces taken from a shelf for a child.
 *
 * @param movement made by whoever asks, so that asking twice takes once
 * @param lot the lot, where it is known; of a tray, only when it was read from the piece
 * @param holder for whom, by an id that means nothing here: the procedure
 */
public record Use(UUID movement, ShelfId from, ProductId product, Optional<LotId> lot, int quantity, UUID holder) {

    public Use {
        if (quantity < 1) {
            throw new IllegalArgumentException("at least one piece is used, not " + quantity);
        }
    }
}
