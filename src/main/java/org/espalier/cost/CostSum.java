package org.espalier.cost;

import java.util.Collection;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What charges add up to, overheads in it, a currency by itself.
 *
 * @param byCurrency by the currency's code
 * @param unpriced how many charges have no price and are not in it
 */
public record CostSum(Map<String, Money> byCurrency, int unpriced) {

    public static final CostSum NOTHING = new CostSum(Map.of(), 0);

    public CostSum {
        byCurrency = Map.copyOf(byCurrency);
    }

    public static CostSum of(Optional<Money> amount) {
        return amount.map(one -> new CostSum(Map.of(one.currency().getCurrencyCode(), one), 0))
                .orElse(new CostSum(Map.of(), 1));
    }

    static CostSum ofLines(Collection<ChargeLine> lines) {
        return lines.stream().map(line -> of(line.priced().map(Priced::total))).reduce(NOTHING, CostSum::plus);
    }

    public CostSum plus(CostSum other) {
        var sum = new TreeMap<>(byCurrency);
        other.byCurrency.forEach((code, money) -> sum.merge(code, money, Money::plus));
        return new CostSum(sum, unpriced + other.unpriced);
    }

    /**
     * The whole of it in one currency: of nothing, nothing; empty when another currency or a missing price is in it.
     */
    public Optional<Money> whole(Currency currency) {
        boolean other = byCurrency.keySet().stream().anyMatch(code -> !code.equals(currency.getCurrencyCode()));
        return unpriced > 0 || other
                ? Optional.empty()
                : Optional.of(byCurrency.getOrDefault(currency.getCurrencyCode(), Money.zero(currency)));
    }
}
