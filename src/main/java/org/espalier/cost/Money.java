package org.espalier.cost;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An amount of a currency of ISO 4217, to as many decimals as the currency has. Amounts of two currencies are never
 * added.
 *
 * @param amount may be negative, for a reversal
 */
public record Money(BigDecimal amount, Currency currency) {

    /**
     * Rounds half up to the decimals of the currency, two of the euro, none of the yen, three of the Kuwaiti dinar.
     *
     * @throws IllegalArgumentException if the currency is none that is paid with, such as a metal
     */
    public Money {
        if (currency.getDefaultFractionDigits() < 0) {
            throw new IllegalArgumentException("nobody pays in " + currency);
        }
        amount = amount.setScale(currency.getDefaultFractionDigits(), RoundingMode.HALF_UP);
    }

    public static Money zero(Currency currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    public static Money of(String amount, String currency) {
        return new Money(new BigDecimal(amount), Currency.getInstance(currency));
    }

    /** The sum; nothing of a currency adds up to zero. */
    public static Money sum(Currency currency, Collection<Money> amounts) {
        return amounts.stream().reduce(zero(currency), Money::plus);
    }

    /**
     * The sum.
     *
     * @throws IllegalArgumentException if the currencies differ
     */
    public Money plus(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("not of one currency: " + currency + ", " + other.currency);
        }
        return new Money(amount.add(other.amount), currency);
    }

    public Money negated() {
        return new Money(amount.negate(), currency);
    }

    /** So many times it, rounded half up once. */
    public Money times(BigDecimal factor) {
        return new Money(amount.multiply(factor), currency);
    }

    /**
     * In as many parts, as even as the smallest coin allows; the first parts are the larger ones, and all add up to it.
     *
     * @throws IllegalArgumentException if there is no part
     */
    public List<Money> split(int parts) {
        if (parts < 1) {
            throw new IllegalArgumentException("not into parts: " + parts);
        }
        var coins = amount.unscaledValue().divideAndRemainder(BigInteger.valueOf(parts));
        int larger = Math.abs(coins[1].intValue());
        var sign = BigInteger.valueOf(amount.signum());
        return IntStream.range(0, parts)
                .mapToObj(part -> part < larger ? coins[0].add(sign) : coins[0])
                .map(unscaled -> new Money(new BigDecimal(unscaled, amount.scale()), currency))
                .toList();
    }
}
