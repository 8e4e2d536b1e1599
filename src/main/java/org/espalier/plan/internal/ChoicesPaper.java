package org.espalier.plan.internal;

import java.util.List;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.plan.OptionCells;
import org.espalier.plan.OptionCells.Column;

/** Options side by side on paper, in the cells and the order of the screen. */
final class ChoicesPaper {

    private static final String RULE = "0.4pt solid #c9c0ad";
    private static final List<String> WIDTHS = List.of("11%", "20%", "20%", "21%", "28%");

    private ChoicesPaper() {}

    static void table(Markup body, List<OptionCells> options) {
        var table = body.fo("table")
                .with("table-layout", "fixed")
                .with("width", "100%")
                .with("space-before", "1mm")
                .with("font-size", "7.5pt");
        WIDTHS.forEach(width -> table.fo("table-column").with("column-width", width));
        var head = table.fo("table-header").fo("table-row");
        cell(head).text(Texts.text("plan.column.option"));
        OptionCells.groups().forEach(group -> cell(head)
                .with("color", Ink.QUIET)
                .text(String.join(", ", group.stream().map(Texts::of).toList())));
        var lines = table.fo("table-body");
        for (int i = 0; i < options.size(); i++) {
            row(lines.fo("table-row").with("keep-together.within-page", "5"), i + 1, options.get(i));
        }
    }

    private static void row(Markup row, int number, OptionCells option) {
        cell(row).with("font-weight", "600").text(Texts.text("plan.number", number, Texts.of(option.option())));
        OptionCells.groups().forEach(group -> {
            var cell = cell(row);
            group.stream()
                    .filter(column -> !option.of(column).isEmpty())
                    .forEach(column -> part(cell, column, option.of(column)));
        });
    }

    private static void part(Markup cell, Column column, List<String> lines) {
        cell.fo("block")
                .with("color", Ink.QUIET)
                .with("space-before", "0.8mm")
                .with("keep-with-next.within-page", "always")
                .text(Texts.of(column));
        lines.forEach(line -> cell.fo("block").with("space-after", "0.4mm").text(line));
    }

    private static Markup cell(Markup row) {
        return row.fo("table-cell")
                .with("padding", "0.6mm 2mm 0.8mm 0")
                .with("border-bottom", RULE)
                .fo("block");
    }
}
