package org.espalier.stock;

import java.util.Optional;

/**
 * Pieces whose last day comes soon, or is past.
 *
 * @param cost what one piece cost
 * @param usedInAYear how many pieces of the product operations took in the last year
 */
public record Expiring(Shelf shelf, Product product, Lot lot, int quantity, Optional<UnitCost> cost, int usedInAYear) {}
