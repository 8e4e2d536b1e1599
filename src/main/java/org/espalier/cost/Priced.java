package org.espalier.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What a charge comes to.
 *
 * @param unit price of one, to four decimals
 * @param amount unit times quantity, rounded half up to the currency's decimals
 * @param overheadPercent what comes on top
 * @param overhead the percentage of the rounded amount, rounded likewise
 */
public record Priced(BigDecimal unit, Money amount, BigDecimal overheadPercent, Money overhead) {

    public Priced {
        unit = unit.setScale(4, RoundingMode.HALF_UP);
        overheadPercent = overheadPercent.setScale(4, RoundingMode.HALF_UP);
    }

    public Money total() {
        return amount.plus(overhead);
    }

    Priced negated() {
        return new Priced(unit, amount.negated(), overheadPercent, overhead.negated());
    }
}
