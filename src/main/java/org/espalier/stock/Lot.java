package org.espalier.stock;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of one product that were made together.
 *
 * @param expires the last day of use; null where there is none
 * @param held whether a safety notice holds it in quarantine everywhere
 */
public record Lot(
        LotId id,
        ProductId product,
        String number,
        @Nullable LocalDate expires,
        boolean held) {

    /** Whether its last day is past. */
    public boolean isExpiredOn(LocalDate day) {
        return expires != null && expires.isBefore(day);
    }
}
