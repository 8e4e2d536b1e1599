package org.espalier.reading.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.reading.Change;
import org.espalier.reading.ChangeText;
import org.espalier.reading.Comparison;
import org.espalier.reading.Comparison.Compared;
import org.espalier.reading.Comparison.Row;
import org.espalier.reading.NumberText;
import org.espalier.reading.ReadNumber;
import org.espalier.science.alignment.NormalRange;
import org.espalier.science.quantity.Side;

/** The numbers of both films and what became of each, limb by limb. */
final class ComparisonTable extends Composite<Section> {

    private final Comparison comparison;

    ComparisonTable(Comparison comparison) {
        this.comparison = comparison;
        getContent().addClassName("comparison");
        getContent().add(new H2(Texts.text("reading.compare.numbers")));
        Stream.of(Side.values()).forEach(this::add);
    }

    private void add(Side side) {
        var rows = comparison.rows().stream().filter(row -> row.side() == side).toList();
        if (!rows.isEmpty()) {
            getContent().add(table(side, rows));
        }
    }

    private NativeTable table(Side side, List<Row> rows) {
        var limb = column(Texts.of(side));
        limb.addClassName(side == Side.RIGHT ? "limb-right" : "limb-left");
        var head = new NativeTableRow(
                limb,
                column(ComparisonView.day(comparison.earlier())),
                column(ComparisonView.day(comparison.later())),
                column(Texts.text("reading.compare.difference")));
        var table = new NativeTable(head);
        rows.forEach(row -> table.add(line(row)));
        return table;
    }

    private NativeTableRow line(Row row) {
        var name = new NativeTableHeaderCell(NumberText.label(row.quantity()));
        name.getElement().setAttribute("scope", "row");
        var change =
                new NativeTableCell(row.change().map(ComparisonTable::words).orElse(""));
        row.change().filter(Change::isUnmeasurable).ifPresent(same -> change.addClassName("unchanged"));
        return new NativeTableRow(
                name, value(row.earlier(), comparison.earlier()), value(row.later(), comparison.later()), change);
    }

    private static NativeTableCell value(Optional<ReadNumber> number, Compared film) {
        return new NativeTableCell(
                number.map(read -> text(read, film)).orElseGet(() -> Texts.text("reading.compare.absent")));
    }

    private static String text(ReadNumber number, Compared film) {
        var range = film.age().flatMap(age -> NormalRange.of(number.quantity(), age));
        return NumberText.of(number.quantity(), number.value().orElseThrow(), range);
    }

    private static String words(Change change) {
        var difference = ChangeText.difference(change);
        return ChangeText.limit(change)
                .map(limit -> Texts.text(
                        change.isUnmeasurable() ? "reading.compare.unchanged" : "reading.compare.changed",
                        difference,
                        limit))
                .orElseGet(() -> Texts.text("reading.compare.no-limit", difference));
    }

    private static NativeTableHeaderCell column(String text) {
        var header = new NativeTableHeaderCell(text);
        header.getElement().setAttribute("scope", "col");
        return header;
    }
}
