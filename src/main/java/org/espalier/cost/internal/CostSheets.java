package org.espalier.cost.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.espalier.cost.Cell;
import org.espalier.cost.ChargeService.Booked;
import org.espalier.cost.Money;
import org.espalier.cost.PathwayFigures;
import org.espalier.cost.PathwayLine;
import org.espalier.cost.PathwayReport;
import org.espalier.cost.Priced;
import org.espalier.kit.Texts;
import org.jspecify.annotations.Nullable;

/** Costs as sheets: the same as on the screens, a number to a cell. */
final class CostSheets {

    private CostSheets() {}

    static Sheet charges(List<Booked> charges, ZoneId zone) {
        var headings = texts(
                "cost.file.pseudonym",
                "cost.file.from",
                "cost.file.until",
                "cost.item",
                "cost.rule",
                "cost.side",
                "cost.quantity",
                "cost.unit-price",
                "cost.file.currency",
                "cost.amount",
                "cost.file.percent",
                "cost.overhead",
                "cost.file.recorded",
                "cost.file.charge",
                "cost.file.reverses",
                "cost.reason");
        return new Sheet(
                Texts.text("cost.file.charges"),
                headings,
                charges.stream().map(one -> row(one, zone)).toList());
    }

    private static List<@Nullable Object> row(Booked booked, ZoneId zone) {
        var charge = booked.charge();
        var line = charge.line();
        var side = line.side();
        var priced = line.priced();
        return row(
                booked.pseudonym().text(),
                line.on(),
                line.until(),
                Texts.of(line.item()),
                Texts.of(line.rule()),
                side == null ? Texts.text("cost.both") : Texts.of(side),
                line.quantity(),
                priced.map(Priced::unit).orElse(null),
                priced.map(one -> one.amount().currency().getCurrencyCode()).orElse(null),
                priced.map(one -> one.amount().amount()).orElse(null),
                priced.map(Priced::overheadPercent).orElse(null),
                priced.map(one -> one.overhead().amount()).orElse(null),
                charge.at().atZone(zone).toLocalDateTime().withNano(0).toString(),
                charge.id().value().toString(),
                charge.reverses().map(id -> id.value().toString()).orElse(null),
                charge.reason().orElse(null));
    }

    static Sheet pathways(List<PathwayReport> reports, Function<PathwayLine, String> hospital) {
        var headings = texts(
                "cost.pathway",
                "cost.hospital",
                "cost.year",
                "cost.file.currency",
                "cost.limbs",
                "cost.median",
                "cost.file.lower",
                "cost.file.upper",
                "cost.operations-each",
                "cost.file.known",
                "cost.on-target",
                "cost.per-limb",
                "cost.per-degree");
        return new Sheet(
                Texts.text("cost.file.pathways"),
                headings,
                reports.stream()
                        .flatMap(report -> report.lines().stream())
                        .map(line -> row(line, hospital.apply(line)))
                        .toList());
    }

    private static List<@Nullable Object> row(PathwayLine line, String hospital) {
        var figures = line.figures();
        var target = figures.flatMap(PathwayFigures::target);
        return row(
                Texts.of(line.pathway()),
                hospital,
                line.year(),
                line.currency().orElse(null),
                line.limbs() instanceof Cell.Told(int count) ? (Object) count : Texts.text("cost.hidden"),
                figures.map(one -> whole(one.spread().median())).orElse(null),
                figures.map(one -> whole(one.spread().lower())).orElse(null),
                figures.map(one -> whole(one.spread().upper())).orElse(null),
                figures.map(one -> decimal(one.meanOperations())).orElse(null),
                target.map(PathwayFigures.Reached::known).orElse(null),
                target.map(PathwayFigures.Reached::reached).orElse(null),
                whole(target.flatMap(PathwayFigures.Reached::perLimb)),
                whole(target.flatMap(PathwayFigures.Reached::perDegree)));
    }

    private static @Nullable BigDecimal whole(Optional<Money> money) {
        return money.map(CostSheets::whole).orElse(null);
    }

    /** What is averaged is told to whole units. */
    private static BigDecimal whole(Money money) {
        return money.amount().setScale(0, RoundingMode.HALF_UP);
    }

    private static BigDecimal decimal(double number) {
        return BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
    }

    private static List<@Nullable Object> row(@Nullable Object... cells) {
        return new ArrayList<>(Arrays.asList(cells));
    }

    private static List<String> texts(String... keys) {
        return Stream.of(keys).map(Texts::text).toList();
    }
}
