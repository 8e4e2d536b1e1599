package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What a list of items would cost at one hospital by its tariffs of a day. What has no tariff is named and not counted.
 *
 * @param lines the items with a price, in the order of the tariff
 * @param direct the sum without overheads; empty when nothing has a price or the prices are in several currencies
 * @param overhead what comes on top by the hospital's rule; empty likewise
 * @param missing what has no tariff on that day
 * @param taxes what the prices say of tax
 */
public record CostEstimate(
        LocalDate on,
        List<Line> lines,
        Optional<Money> direct,
        Optional<Money> overhead,
        Set<TariffItem> missing,
        Set<Tax> taxes) {

    /** So many of an item. */
    public record Line(TariffItem item, BigDecimal quantity, Money amount, Money overhead, TariffId tariff) {}

    public CostEstimate {
        lines = List.copyOf(lines);
        missing = Set.copyOf(missing);
        taxes = Set.copyOf(taxes);
    }

    /** Direct cost and overheads together. */
    public Optional<Money> total() {
        return direct.flatMap(one -> overhead.map(one::plus));
    }

    static CostEstimate of(TariffBook book, LocalDate on, Map<TariffItem, BigDecimal> quantities) {
        var missing = new TreeSet<TariffItem>();
        var taxes = new TreeSet<Tax>();
        var lines = new ArrayList<Line>();
        new TreeMap<>(quantities).forEach((item, quantity) -> book.find(item, "", on)
                .ifPresentOrElse(
                        tariff -> {
                            taxes.add(tariff.data().tax());
                            lines.add(line(book, tariff, quantity, on));
                        },
                        () -> missing.add(item)));
        var currencies =
                lines.stream().map(line -> line.amount().currency()).distinct().toList();
        boolean one = currencies.size() == 1;
        return new CostEstimate(
                on,
                lines,
                one ? Optional.of(sum(lines, Line::amount)) : Optional.empty(),
                one ? Optional.of(sum(lines, Line::overhead)) : Optional.empty(),
                missing,
                taxes);
    }

    private static Line line(TariffBook book, Tariff tariff, BigDecimal quantity, LocalDate on) {
        var item = tariff.data().item();
        var priced = Pricing.priced(quantity, Pricing.unit(tariff), book.overhead(item, "", on));
        return new Line(item, quantity, priced.amount(), priced.overhead(), tariff.id());
    }

    private static Money sum(List<Line> lines, Function<Line, Money> part) {
        return lines.stream().map(part).reduce(Money::plus).orElseThrow();
    }
}
