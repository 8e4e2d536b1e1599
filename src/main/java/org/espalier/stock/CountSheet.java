package org.espalier.stock;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A count of a shelf.
 *
 * @param closedAt empty while it goes on
 */
public record CountSheet(
        UUID id, ShelfId shelf, String openedBy, Instant openedAt, Optional<Instant> closedAt, List<Line> lines) {

    /**
     * One line as it was counted.
     *
     * @param expected what the books said when it was counted
     */
    public record Line(Product product, Optional<Lot> lot, int expected, int counted) {

        /** Too many, or with a minus too few. */
        public int difference() {
            return counted - expected;
        }
    }

    public CountSheet {
        lines = List.copyOf(lines);
    }
}
