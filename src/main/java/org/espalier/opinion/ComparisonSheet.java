package org.espalier.opinion;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.opinion.FactSheet.Line;
import org.espalier.plan.Intent;
import org.espalier.plan.OptionCells;
import org.espalier.plan.OptionCells.Column;
import org.espalier.plan.SavedComparison;
import org.jspecify.annotations.Nullable;

/**
 * A comparison of options as it was kept, without days. Costs are left out, as they are one hospital's own; so is what
 * was published of each option, which is the same for every child and stands on every hospital's own page of options.
 */
final class ComparisonSheet {

    private static final List<Column> SHOWN =
            List.of(Column.COURSE, Column.TARGET, Column.WINDOW, Column.TAKES, Column.LENGTH, Column.FLAGS);

    private final FactSheets words;
    private final DaylessWords days;
    private final List<Line> lines = new ArrayList<>();

    private ComparisonSheet(FactSheets words, DaylessWords days) {
        this.words = words;
        this.days = days;
    }

    static FactSheet of(SavedComparison kept, FactSheets words, @Nullable LocalDate first) {
        var sheet = new ComparisonSheet(words, new DaylessWords(first));
        kept.intent().ifPresent(sheet::meant);
        kept.options().forEach(sheet::option);
        return new FactSheet(Texts.text("opinion.comparison", Texts.of(kept.side())), sheet.lines);
    }

    private void meant(Intent intent) {
        lines.add(new Line(Texts.text("opinion.meant"), Texts.of(intent.meant())));
        words.free("opinion.intent", dayless(intent.aim())).ifPresent(lines::add);
        words.free("opinion.expected", dayless(intent.expectation())).ifPresent(lines::add);
        var hka = intent.expectedHka();
        if (hka != null) {
            var angle = QuantityText.ofDeviation(hka);
            var said = days.months(intent.expectedBy())
                    .map(months -> Texts.text("opinion.hka.by", angle, months))
                    .orElse(angle);
            lines.add(new Line(Texts.text("opinion.hka"), said));
        }
    }

    private String dayless(String said) {
        return days.of(said).orElseGet(() -> Texts.text("opinion.left-out.day"));
    }

    private void option(OptionCells option) {
        var said = SHOWN.stream()
                .flatMap(column -> cell(option, column))
                .reduce((before, after) -> before + "\n" + after)
                .orElse("");
        lines.add(new Line(Texts.of(option.option()), said));
    }

    private Stream<String> cell(OptionCells option, Column column) {
        var told = option.of(column).stream().map(this::dayless).toList();
        return told.isEmpty()
                ? Stream.empty()
                : Stream.of(Texts.text("opinion.paper.line", Texts.of(column), String.join("; ", told)));
    }
}
