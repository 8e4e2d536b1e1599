package org.espalier.stock;

import java.time.Instant;
import java.util.Optional;
import org.espalier.access.SiteId;

/**
 * Goods on their way from one hospital to another: the sender's until the other signs for them.
 *
 * @param shelf the shelf on which they are meanwhile
 * @param receivedBy who signed at the other end; empty until then
 * @param pieces how many are on their way still
 */
public record StockTransfer(
        ShelfId shelf,
        SiteId from,
        SiteId to,
        String sentBy,
        Instant sentAt,
        Optional<String> receivedBy,
        Optional<Instant> receivedAt,
        int pieces) {}
