package org.espalier.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * What one piece cost.
 *
 * @param amount in the currency's unit, to two decimals, not negative
 */
public record UnitCost(BigDecimal amount, Currency currency) {

    public UnitCost {
        amount = amount.setScale(2, RoundingMode.HALF_UP);
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("a cost is not negative: " + amount);
        }
    }
}
