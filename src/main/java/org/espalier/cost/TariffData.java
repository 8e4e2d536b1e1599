package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import org.jspecify.annotations.Nullable;

/**
 * A price as it is set.
 *
 * @param payer for whom it holds; empty for every payer that has no price of its own
 * @param price in the currency's unit, to four decimals; of a share, in percent
 * @param currency null of a share alone
 * @param from the first day it holds for
 * @param source where it comes from, such as a price list or an agreement
 */
public record TariffData(
        TariffItem item,
        String payer,
        BigDecimal price,
        @Nullable Currency currency,
        Tax tax,
        LocalDate from,
        String source) {

    /** The longest name of a payer that is kept. */
    public static final int PAYER_LENGTH = 80;

    /** The longest source that is kept, and the shortest. */
    public static final int SOURCE_LENGTH = 200;

    public static final int LEAST_SOURCE = 3;

    private static final int DECIMALS = 4;
    private static final BigDecimal MOST = new BigDecimal("1000000");
    private static final BigDecimal MOST_PERCENT = new BigDecimal("200");

    public TariffData {
        payer = payer.strip();
        source = source.strip();
        price = price.stripTrailingZeros();
        demand(isPrice(price, item.isShare()), "price", price);
        demand(item.isShare() == (currency == null), "currency", String.valueOf(currency));
        demand(payer.length() <= PAYER_LENGTH, "payer", payer);
        demand(source.length() >= LEAST_SOURCE && source.length() <= SOURCE_LENGTH, "source", source);
        if (currency != null) {
            Money.zero(currency);
        }
    }

    /** Whether it can be a price: not below nothing, to four decimals, at most a million, of a share 200 %. */
    public static boolean isPrice(BigDecimal price, boolean share) {
        return price.signum() >= 0
                && price.compareTo(share ? MOST_PERCENT : MOST) <= 0
                && price.stripTrailingZeros().scale() <= DECIMALS;
    }

    private static void demand(boolean holds, String what, Object value) {
        if (!holds) {
            throw new IllegalArgumentException("not a " + what + " of a tariff: " + value);
        }
    }
}
