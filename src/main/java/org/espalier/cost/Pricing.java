package org.espalier.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.espalier.stock.UnitCost;

/**
 * Gives claims their prices. What runs over days is cut where the tariff changes, each part priced by its own.
 *
 * <pre>
 * amount   = quantity × unit price         rounded half up to the currency's decimals
 * overhead = amount × percent / 100        of the rounded amount, rounded likewise
 * </pre>
 */
final class Pricing {

    /** A price of one in a currency. */
    record Unit(BigDecimal price, Currency currency) {}

    private static final BigDecimal HUNDRED = new BigDecimal(100);

    private final TariffBook book;
    private final String payer;

    Pricing(TariffBook book, String payer) {
        this.book = book;
        this.payer = payer;
    }

    static Priced priced(BigDecimal quantity, Unit unit, BigDecimal percent) {
        var amount = new Money(unit.price().multiply(quantity), unit.currency());
        var overhead = new Money(amount.amount().multiply(percent).divide(HUNDRED), unit.currency());
        return new Priced(unit.price(), amount, percent, overhead);
    }

    static Unit unit(Tariff tariff) {
        return new Unit(
                tariff.data().price(),
                Optional.ofNullable(tariff.data().currency()).orElseThrow());
    }

    List<ChargeLine> price(List<Claim> claims) {
        return claims.stream().flatMap(claim -> price(claim).stream()).toList();
    }

    List<ChargeLine> price(Claim claim) {
        return claim.item().runsOverDays()
                ? days(claim)
                : List.of(line(claim, claim.on(), claim.on(), claim.quantity()));
    }

    /** Whole days first; what is left of one stands on the last day. */
    private List<ChargeLine> days(Claim claim) {
        int days = claim.quantity().setScale(0, RoundingMode.CEILING).intValueExact();
        var lines = new ArrayList<ChargeLine>();
        int first = 0;
        for (int next = 1; next <= days; next++) {
            if (next == days || changes(claim, claim.on().plusDays(next))) {
                var quantity = BigDecimal.valueOf(next).min(claim.quantity()).subtract(BigDecimal.valueOf(first));
                lines.add(line(claim, claim.on().plusDays(first), claim.on().plusDays(next - 1L), quantity));
                first = next;
            }
        }
        return lines;
    }

    private boolean changes(Claim claim, LocalDate day) {
        var before = day.minusDays(1);
        return !tariff(claim, day).equals(tariff(claim, before))
                || book.overhead(claim.item(), payer, day).compareTo(book.overhead(claim.item(), payer, before)) != 0;
    }

    private Optional<Tariff> tariff(Claim claim, LocalDate day) {
        return book.find(claim.item(), payer, day);
    }

    private ChargeLine line(Claim claim, LocalDate from, LocalDate until, BigDecimal quantity) {
        var tariff = claim.cost().isPresent() ? Optional.<Tariff>empty() : tariff(claim, from);
        var unit = claim.cost().map(Pricing::unit).or(() -> tariff.map(Pricing::unit));
        var percent = book.overhead(claim.item(), payer, from);
        return new ChargeLine(
                claim.source(),
                claim.fact(),
                claim.rule(),
                claim.item(),
                claim.side(),
                from,
                until,
                quantity,
                unit.map(one -> priced(quantity, one, percent)),
                tariff.map(Tariff::id),
                claim.movement());
    }

    private static Unit unit(UnitCost cost) {
        return new Unit(cost.amount(), cost.currency());
    }
}
