package org.espalier.stock;

import java.util.Optional;

/**
 * Pieces whose last day comes soon, or is past.
 *
 * @param cost what one piece cost
 * @param usedInAYear how many pieces of the product operations took in the last year
 * @param leftOver how many of them are left unused on their last day if operations go on as in the last year and always
 *     take what expires first
 */
public record Expiring(
        Shelf shelf, Product product, Lot lot, int quantity, Optional<UnitCost> cost, int usedInAYear, int leftOver) {}
