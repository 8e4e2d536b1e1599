package org.espalier.cost;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.SiteId;

/**
 * What pathways cost at one hospital in one year: limbs whose care ended in it, treated there alone, all of whose
 * charges have a price in one currency. Of fewer than five children nothing is told.
 *
 * @param lines by pathway
 * @param mix children by diagnosis and by the most that was done to either limb, with totals; a row each diagnosis
 * @param leftOut limbs that ended in the year and are not counted: treated elsewhere too, or without every price
 */
public record PathwayReport(SiteId site, int year, List<PathwayLine> lines, List<List<Cell>> mix, Cell leftOut) {

    public PathwayReport {
        lines = List.copyOf(lines);
        mix = List.copyOf(mix);
    }

    static PathwayReport of(SiteId site, int year, List<EpisodeCost> all) {
        var ended = all.stream()
                .filter(one -> one.episode()
                        .ended()
                        .filter(day -> day.getYear() == year)
                        .isPresent())
                .toList();
        var whole = ended.stream().filter(PathwayReport::isWhole).toList();
        var lines = Stream.of(Pathway.values())
                .flatMap(pathway -> lines(site, year, pathway, whole).stream())
                .toList();
        return new PathwayReport(site, year, lines, mix(whole), Cell.of(ended.size() - whole.size()));
    }

    private static boolean isWhole(EpisodeCost one) {
        return !one.episode().elsewhere()
                && one.total().unpriced() == 0
                && one.total().byCurrency().size() == 1;
    }

    private static List<PathwayLine> lines(SiteId site, int year, Pathway pathway, List<EpisodeCost> whole) {
        Map<String, List<EpisodeCost>> byCurrency = whole.stream()
                .filter(one -> one.episode().pathway() == pathway)
                .collect(Collectors.groupingBy(
                        one -> one.total().byCurrency().keySet().iterator().next(), TreeMap::new, Collectors.toList()));
        return byCurrency.entrySet().stream()
                .map(one -> line(site, year, pathway, one.getKey(), one.getValue()))
                .toList();
    }

    private static PathwayLine line(SiteId site, int year, Pathway pathway, String code, List<EpisodeCost> limbs) {
        boolean told = children(limbs) >= Cell.LEAST;
        return new PathwayLine(
                site,
                year,
                pathway,
                Optional.of(code),
                told ? new Cell.Told(limbs.size()) : new Cell.Hidden(),
                told ? Optional.of(figures(limbs, Currency.getInstance(code))) : Optional.empty());
    }

    private static PathwayFigures figures(List<EpisodeCost> limbs, Currency currency) {
        var costs = limbs.stream().map(one -> cost(one, currency)).toList();
        double operations = limbs.stream()
                .mapToInt(one -> one.episode().operations())
                .average()
                .orElse(0);
        return new PathwayFigures(Spread.of(costs), operations, reached(limbs, currency));
    }

    private static Money cost(EpisodeCost one, Currency currency) {
        return one.total().whole(currency).orElseThrow();
    }

    /** Neither those that reached their target nor those that did not may be so few that they are known by it. */
    private static Optional<PathwayFigures.Reached> reached(List<EpisodeCost> limbs, Currency currency) {
        var known = limbs.stream()
                .filter(one -> one.episode().onTarget().isPresent())
                .toList();
        var on = known.stream()
                .filter(one -> one.episode().onTarget().orElse(false))
                .toList();
        var off = known.stream()
                .filter(one -> !one.episode().onTarget().orElse(true))
                .toList();
        if (children(known) < Cell.LEAST || Cell.isSmall(children(on)) || Cell.isSmall(children(off))) {
            return Optional.empty();
        }
        var total = Money.sum(
                currency, known.stream().map(one -> cost(one, currency)).toList());
        double degrees = known.stream()
                .mapToDouble(one -> one.episode().degrees().orElse(0))
                .sum();
        return Optional.of(new PathwayFigures.Reached(
                known.size(), on.size(), divided(total, on.size()), divided(total, degrees)));
    }

    private static Optional<Money> divided(Money total, double by) {
        return by > 0
                ? Optional.of(new Money(
                        total.amount().divide(BigDecimal.valueOf(by), MathContext.DECIMAL64), total.currency()))
                : Optional.empty();
    }

    private static int children(Collection<EpisodeCost> limbs) {
        return (int) limbs.stream().map(one -> one.episode().child()).distinct().count();
    }

    private static List<List<Cell>> mix(List<EpisodeCost> whole) {
        var counts = new int[DiagnosisGroup.values().length][Pathway.values().length];
        Map<?, Optional<Episode>> byChild = whole.stream()
                .map(EpisodeCost::episode)
                .collect(Collectors.groupingBy(
                        Episode::child,
                        Collectors.maxBy(Comparator.comparing((Function<Episode, Pathway>) Episode::pathway))));
        byChild.values().stream()
                .flatMap(Optional::stream)
                .forEach(most ->
                        counts[most.diagnosis().ordinal()][most.pathway().ordinal()]++);
        return CountTable.tell(Arrays.copyOf(counts, counts.length));
    }
}
