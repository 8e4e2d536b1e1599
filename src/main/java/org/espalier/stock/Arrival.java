package org.espalier.stock;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * Pieces that came from a supplier.
 *
 * @param id made by whoever asks, so that asking twice takes in once
 * @param lotNumber as on the label; empty for a product whose lots are not kept
 * @param expires the last day of use on the label
 * @param cost what one piece cost; empty when not told
 */
public record Arrival(
        UUID id,
        ProductId product,
        Optional<String> lotNumber,
        Optional<LocalDate> expires,
        int quantity,
        ShelfId to,
        Optional<UnitCost> cost) {

    public Arrival {
        lotNumber = lotNumber.map(String::strip).filter(number -> !number.isEmpty());
        if (quantity < 1) {
            throw new IllegalArgumentException("at least one piece comes in, not " + quantity);
        }
    }
}
