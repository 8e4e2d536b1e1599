package org.espalier.stock;

import java.math.BigDecimal;
import java.util.Currency;

/**
 * What lies on the shelves is worth, by what each lot cost.
 *
 * @param pieces how many have a cost
 */
public record StockValue(ShelfKind kind, Currency currency, BigDecimal amount, int pieces) {}
