package org.espalier.stock;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a storekeeper says of a shelf.
 *
 * @param kind a store, a tray or consignment
 * @param owner whose it is when it was lent or is on consignment
 */
public record ShelfData(
        ShelfKind kind,
        String name,
        @Nullable String owner,
        @Nullable LocalDate backBy) {

    public ShelfData {
        name = name.strip();
        if (!kind.isUsable() || name.isEmpty()) {
            throw new IllegalArgumentException("a store, a tray or consignment, with a name: " + kind + " " + name);
        }
    }
}
