package org.espalier.stock;

import java.util.List;
import java.util.UUID;
import org.espalier.access.SiteId;

/**
 * Pieces taken out of a child. They never come back to a shelf.
 *
 * @param movement made by whoever asks, so that asking twice takes out once
 * @param site the hospital where they were taken out
 * @param lots the lot, or the lots they may be; empty when nothing is known of them
 * @param holder the procedure that took them out
 */
public record Explant(
        UUID movement, SiteId site, ProductId product, List<LotId> lots, int quantity, UUID holder, Fate fate) {

    /** Where the pieces go. */
    public enum Fate {
        DISPOSED,
        /** The family keeps them. */
        KEPT,
        ANALYSIS
    }

    public Explant {
        lots = List.copyOf(lots);
        if (quantity < 1) {
            throw new IllegalArgumentException("at least one piece is taken out, not " + quantity);
        }
    }
}
