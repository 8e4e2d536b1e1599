package org.espalier.stock;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.access.SiteId;

/**
 * What is kept for a planned operation.
 *
 * @param id made by whoever asks
 * @param holder the plan, by an id that means nothing here
 */
public record Reservation(UUID id, SiteId site, UUID holder, LocalDate neededOn, List<Need> needs) {

    public Reservation {
        needs = List.copyOf(needs);
        if (needs.isEmpty()) {
            throw new IllegalArgumentException("a reservation says what is needed");
        }
    }
}
