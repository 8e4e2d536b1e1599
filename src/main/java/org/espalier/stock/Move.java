package org.espalier.stock;

import java.util.Optional;
import java.util.UUID;

/**
 * Pieces to be carried from one shelf to another.
 *
 * @param id made by whoever asks, so that asking twice moves once
 * @param lot empty where the lots are mixed, or none is kept
 */
public record Move(
        UUID id, ProductId product, Optional<LotId> lot, int quantity, ShelfId from, ShelfId to, Optional<String> why) {

    public Move {
        if (quantity < 1) {
            throw new IllegalArgumentException("at least one piece is moved, not " + quantity);
        }
    }
}
