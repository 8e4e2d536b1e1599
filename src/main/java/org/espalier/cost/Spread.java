package org.espalier.cost;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/**
 * Where amounts of one currency lie.
 *
 * <pre>
 * h    = (n − 1) p        with the amounts x(0) to x(n − 1) in order
 * Q(p) = x(⌊h⌋) + (h − ⌊h⌋) (x(⌊h⌋ + 1) − x(⌊h⌋))
 * </pre>
 *
 * <p>Source: Hyndman and Fan, Am Stat 1996;50:361, definition 7 (from memory). Error: rounded half up to the currency's
 * decimals.
 *
 * @param count n, at least 1
 * @param lower a quarter are no higher
 * @param median half are no higher
 * @param upper three quarters are no higher
 */
public record Spread(int count, Money lower, Money median, Money upper) {

    private static final BigDecimal QUARTER = new BigDecimal("0.25");

    /**
     * Of amounts in one currency.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Spread of(List<Money> amounts) {
        if (amounts.isEmpty()) {
            throw new IllegalArgumentException("no amounts to spread");
        }
        var ordered =
                amounts.stream().sorted(Comparator.comparing(Money::amount)).toList();
        return new Spread(
                ordered.size(),
                quantile(ordered, QUARTER),
                quantile(ordered, QUARTER.add(QUARTER)),
                quantile(ordered, BigDecimal.ONE.subtract(QUARTER)));
    }

    private static Money quantile(List<Money> ordered, BigDecimal part) {
        var place = part.multiply(BigDecimal.valueOf(ordered.size() - 1L));
        int below = place.intValue();
        var low = ordered.get(below);
        var high = ordered.get(Math.min(below + 1, ordered.size() - 1));
        var rest = place.subtract(BigDecimal.valueOf(below));
        return new Money(low.amount().add(rest.multiply(high.amount().subtract(low.amount()))), low.currency());
    }
}
