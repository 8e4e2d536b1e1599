package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is to come in the next quarter by what is written down today: operations that have a day in it, operations that
 * have none yet, open visits and films due by its end. Each at the tariffs of the quarter's first day, with overheads.
 *
 * <pre>
 * low    = operations with a day + visits + films
 * middle = low + half of the operations without a day
 * high   = low + all operations without a day
 * </pre>
 *
 * <p>Not in it: children not yet known, visits that follow on one in the quarter, nights longer than agreed, implants
 * beyond the usual ones. Half is a convention, not a measurement.
 *
 * @param from first day of the quarter
 * @param until last day
 * @param missing what has no tariff and is not in it
 * @param implants what an operation's implants came to in the last year, in the middle; empty when none were charged
 */
public record Budget(
        LocalDate from,
        LocalDate until,
        List<Line> lines,
        Optional<Range> range,
        Set<TariffItem> missing,
        Optional<Spread> implants) {

    private static final int QUARTER_MONTHS = 3;

    /** What is to come. */
    public enum What {
        OPERATIONS_WITH_A_DAY,
        OPERATIONS_WITHOUT_A_DAY,
        VISITS,
        FILMS
    }

    /** So many of it; its cost is empty while a price is missing. */
    public record Line(What what, int count, Optional<Money> cost) {}

    /** From what is sure to what is possible. */
    public record Range(Money low, Money middle, Money high) {}

    public Budget {
        lines = List.copyOf(lines);
        missing = Set.copyOf(missing);
    }

    /** The first day of the quarter after the one that the day is in. */
    public static LocalDate nextQuarter(LocalDate today) {
        int month = (today.getMonthValue() - 1) / QUARTER_MONTHS * QUARTER_MONTHS + 1;
        return today.withDayOfMonth(1).withMonth(month).plusMonths(QUARTER_MONTHS);
    }

    static Budget of(
            LocalDate today,
            List<Expected> expected,
            TariffBook tariffs,
            AllowanceBook agreed,
            Optional<Spread> implants) {
        var from = nextQuarter(today);
        var until = from.plusMonths(QUARTER_MONTHS).minusDays(1);
        var missing = new TreeSet<TariffItem>();
        var pricing = new Pricer(tariffs, agreed, from, implants, missing);
        var operations = of(expected, Expected.Operation.class);
        var looks = of(expected, Expected.Look.class).stream()
                .filter(look -> !look.on().isAfter(until))
                .toList();
        var dated = operations.stream()
                .filter(one -> one.on()
                        .filter(day -> !day.isBefore(from) && !day.isAfter(until))
                        .isPresent())
                .toList();
        var undated = operations.stream().filter(one -> one.on().isEmpty()).toList();
        var films = looks.stream().filter(Expected.Look::film).toList();
        var lines = List.of(
                pricing.operations(What.OPERATIONS_WITH_A_DAY, dated),
                pricing.operations(What.OPERATIONS_WITHOUT_A_DAY, undated),
                pricing.pieces(What.VISITS, TariffItem.VISIT, looks.size()),
                pricing.pieces(What.FILMS, TariffItem.FILM, films.size()));
        return new Budget(from, until, lines, range(lines), missing, implants);
    }

    private static <E extends Expected> List<E> of(List<Expected> expected, Class<E> kind) {
        return expected.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private static Optional<Range> range(List<Line> lines) {
        var currencies = lines.stream()
                .flatMap(line -> line.cost().stream())
                .map(Money::currency)
                .distinct()
                .toList();
        if (currencies.size() != 1) {
            return Optional.empty();
        }
        var open = lines.stream()
                .filter(line -> line.what() == What.OPERATIONS_WITHOUT_A_DAY)
                .flatMap(line -> line.cost().stream())
                .reduce(Money.zero(currencies.getFirst()), Money::plus);
        var low = lines.stream()
                .filter(line -> line.what() != What.OPERATIONS_WITHOUT_A_DAY)
                .flatMap(line -> line.cost().stream())
                .reduce(Money.zero(currencies.getFirst()), Money::plus);
        return Optional.of(new Range(low, low.plus(open.times(new BigDecimal("0.5"))), low.plus(open)));
    }

    /** Prices what is to come, and notes what has no tariff. */
    private record Pricer(
            TariffBook tariffs,
            AllowanceBook agreed,
            LocalDate on,
            Optional<Spread> implants,
            Set<TariffItem> missing) {

        Line operations(What what, List<Expected.Operation> operations) {
            var costs = new ArrayList<Money>();
            operations.forEach(one -> {
                var taken = new Quantities(agreed.operation(List.of(one.kind()), on));
                cost(taken).ifPresent(costs::add);
                implants.filter(spread -> one.kind().putsIn())
                        .map(Spread::median)
                        .ifPresent(costs::add);
            });
            return new Line(what, operations.size(), sum(costs));
        }

        Line pieces(What what, TariffItem item, int count) {
            var taken = Quantities.NONE.with(item, BigDecimal.valueOf(count));
            return new Line(what, count, count == 0 ? Optional.empty() : cost(taken));
        }

        private Optional<Money> cost(Quantities taken) {
            var estimate = CostEstimate.of(tariffs, on, taken.of());
            missing.addAll(estimate.missing());
            return estimate.total();
        }

        private static Optional<Money> sum(List<Money> costs) {
            return costs.stream().map(Money::currency).distinct().count() > 1
                    ? Optional.empty()
                    : costs.stream().sorted(Comparator.comparing(Money::amount)).reduce(Money::plus);
        }
    }

    /** What the implants of each operation came to, overheads in it. */
    static Optional<Spread> implants(Stream<Charge> charges) {
        var byOperation = charges
                .filter(charge -> charge.stands()
                        && charge.line().item() == TariffItem.IMPLANT
                        && charge.line().source() == ChargeSource.PROCEDURE)
                .collect(Collectors.groupingBy(charge -> charge.line().fact()))
                .values()
                .stream()
                .map(each -> CostSum.ofLines(each.stream().map(Charge::line).toList()))
                .filter(sum -> sum.unpriced() == 0 && sum.byCurrency().size() == 1)
                .map(sum -> sum.byCurrency().values().iterator().next())
                .toList();
        boolean one = byOperation.stream().map(Money::currency).distinct().count() == 1;
        return one ? Optional.of(Spread.of(byOperation)) : Optional.empty();
    }
}
