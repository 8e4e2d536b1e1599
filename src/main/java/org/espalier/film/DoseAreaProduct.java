package org.espalier.film;

import java.math.BigDecimal;

/**
 * Radiation over its area as the machine showed it. The unit is kept and never converted.
 *
 * @param value above 0 to 999999, at most three decimals
 */
public record DoseAreaProduct(BigDecimal value, Unit unit) {

    /** The units that machines show. */
    public enum Unit {
        UGY_M2,
        CGY_CM2,
        MGY_CM2,
        GY_CM2
    }

    private static final BigDecimal GREATEST = BigDecimal.valueOf(999_999);
    private static final int DECIMALS = 3;

    public DoseAreaProduct {
        value = value.stripTrailingZeros();
        if (value.signum() <= 0 || value.compareTo(GREATEST) > 0 || value.scale() > DECIMALS) {
            throw new IllegalArgumentException("A dose-area product lies above 0 with three decimals at most");
        }
    }
}
