package org.espalier.stock;

import java.util.UUID;

/**
 * Pieces of a lot that went into a child.
 *
 * @param holder the id of the procedure that took them
 * @param certain whether they are of the lot, or may be
 */
public record LotUse(UUID holder, UUID movement, ProductId product, LotId lot, int quantity, boolean certain) {}
