package org.espalier.kit;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;

/** Lines under headings; on a phone each line stands by itself with its headings before it. */
public final class LineTable<T> extends Composite<Div> {

    private record Column<T>(String heading, boolean number, Function<T, Component> show) {}

    private final List<Column<T>> columns = new ArrayList<>();
    private final String nothing;
    private Predicate<T> faded = line -> false;
    private Optional<String> order = Optional.empty();

    /** @param nothing the text that says why there are no lines, and what to do */
    public LineTable(String nothing) {
        this.nothing = nothing;
        getContent().addClassName("parts");
    }

    public LineTable<T> text(String heading, Function<T, String> text) {
        return show(heading, one -> new Text(text.apply(one)));
    }

    public LineTable<T> count(String heading, ToIntFunction<T> count) {
        return number(heading, one -> String.valueOf(count.applyAsInt(one)));
    }

    public LineTable<T> number(String heading, Function<T, String> number) {
        return under(Texts.text(heading), number);
    }

    public LineTable<T> show(String heading, Function<T, Component> component) {
        columns.add(new Column<>(Texts.text(heading), false, component));
        return this;
    }

    /** A column whose heading is not a text of its own. */
    public LineTable<T> under(String heading, Function<T, String> number) {
        columns.add(new Column<>(heading, true, one -> new Text(number.apply(one))));
        return this;
    }

    /** Lines that count no longer. */
    public LineTable<T> faded(Predicate<T> which) {
        faded = which;
        return this;
    }

    /** Says in which order the lines stand. */
    public LineTable<T> ordered(String key) {
        order = Optional.of(key);
        return this;
    }

    public LineTable<T> with(List<T> lines) {
        getContent().removeAll();
        if (lines.isEmpty()) {
            getContent().add(PageParts.paragraph("empty", Texts.text(nothing)));
            return this;
        }
        var table = new NativeTable();
        table.addClassName("facts");
        var head = new NativeTableRow();
        columns.forEach(column -> head.add(heading(column)));
        table.getHead().add(head);
        lines.forEach(line -> table.getBody().add(row(line)));
        order.map(key -> PageParts.said(Texts.text(key))).ifPresent(getContent()::add);
        getContent().add(table);
        return this;
    }

    private static NativeTableHeaderCell heading(Column<?> column) {
        var cell = new NativeTableHeaderCell(column.heading());
        cell.setClassName("number", column.number());
        return cell;
    }

    private NativeTableRow row(T line) {
        var row = new NativeTableRow();
        row.setClassName("faded", faded.test(line));
        for (var column : columns) {
            var cell = new NativeTableCell(column.show().apply(line));
            cell.setClassName("number", column.number());
            cell.getElement().setAttribute("data-heading", column.heading());
            row.add(cell);
        }
        return row;
    }
}
