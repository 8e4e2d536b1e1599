package org.espalier.stock;

import java.time.LocalDate;
import org.espalier.access.SiteId;
import org.jspecify.annotations.Nullable;

/**
 * A place that holds stock.
 *
 * @param site whose it is; of goods on their way, the sender
 * @param name null where there is one of its kind
 * @param toSite where goods on their way go
 * @param owner whose it is when it was lent or is on consignment
 * @param backBy when what was lent goes back
 * @param sterilising whether the tray is being made ready
 * @param usedOn the day the tray was last used
 * @param closedOn since when nothing is put there any more
 */
public record Shelf(
        ShelfId id,
        SiteId site,
        ShelfKind kind,
        @Nullable String name,
        int version,
        @Nullable SiteId toSite,
        @Nullable String owner,
        @Nullable LocalDate backBy,
        boolean sterilising,
        @Nullable LocalDate usedOn,
        @Nullable LocalDate closedOn) {}
