package org.espalier.stock.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.espalier.kit.Texts;

/** Lines under headings; on a phone each line stands by itself with its headings before it. */
final class StockTable<T> extends Composite<Div> {

    private record Column<T>(String heading, boolean number, Function<T, Component> show) {}

    private final List<Column<T>> columns = new ArrayList<>();
    private final String nothing;
    private Optional<String> order = Optional.empty();

    /** @param nothing the text that says why there are no lines, and what to do */
    StockTable(String nothing) {
        this.nothing = nothing;
        getContent().addClassName("parts");
    }

    /** Says in which order the lines stand. */
    StockTable<T> ordered(String key) {
        order = Optional.of(key);
        return this;
    }

    StockTable<T> text(String heading, Function<T, String> text) {
        return show(heading, one -> new Text(text.apply(one)));
    }

    StockTable<T> number(String heading, Function<T, Integer> number) {
        columns.add(new Column<>(heading, true, one -> new Text(String.valueOf(number.apply(one)))));
        return this;
    }

    /** A number with its unit. */
    StockTable<T> figure(String heading, Function<T, String> text) {
        columns.add(new Column<>(heading, true, one -> new Text(text.apply(one))));
        return this;
    }

    StockTable<T> show(String heading, Function<T, Component> component) {
        columns.add(new Column<>(heading, false, component));
        return this;
    }

    StockTable<T> with(List<T> lines) {
        getContent().removeAll();
        if (lines.isEmpty()) {
            var empty = new Paragraph(Texts.text(nothing));
            empty.addClassName("empty");
            getContent().add(empty);
            return this;
        }
        var table = new NativeTable();
        table.addClassName("facts");
        var head = new NativeTableRow();
        columns.forEach(column -> head.add(heading(column)));
        table.getHead().add(head);
        lines.forEach(line -> table.getBody().add(row(line)));
        if (lines.size() > 1) {
            order.map(Texts::text).map(Paragraph::new).ifPresent(said -> {
                said.addClassName("small");
                getContent().add(said);
            });
        }
        getContent().add(table);
        return this;
    }

    private static NativeTableHeaderCell heading(Column<?> column) {
        var cell = new NativeTableHeaderCell(Texts.text(column.heading()));
        cell.setClassName("number", column.number());
        return cell;
    }

    private NativeTableRow row(T line) {
        var row = new NativeTableRow();
        for (var column : columns) {
            var cell = new NativeTableCell(column.show().apply(line));
            cell.setClassName("number", column.number());
            cell.getElement().setAttribute("data-heading", Texts.text(column.heading()));
            row.add(cell);
        }
        return row;
    }
}
