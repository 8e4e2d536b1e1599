package org.espalier.safety;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.stock.LotId;

/**
 * Why a lot is held.
 *
 * @param source whose notice it is, and its number
 * @param openedAt the hospital where it was opened
 * @param closedOn when everybody had been told
 */
public record SafetyNotice(
        UUID id,
        LotId lot,
        String lotNumber,
        String product,
        String source,
        String why,
        SiteId openedAt,
        String openedBy,
        Instant openedOn,
        Optional<Instant> closedOn) {

    public boolean isOpen() {
        return closedOn.isEmpty();
    }
}
