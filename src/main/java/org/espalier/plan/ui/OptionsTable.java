package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCaption;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import org.espalier.kit.Texts;
import org.espalier.plan.OptionCells;
import org.espalier.plan.OptionCells.Column;

/** Options side by side, each with what it takes, what it risks, and until when it works. */
class OptionsTable extends NativeTable {

    OptionsTable(String caption, List<OptionCells> options) {
        addClassName("plan-options");
        getElement().setAttribute("role", "table");
        var title = new NativeTableCaption();
        title.setText(caption);
        add(title, head());
        for (int i = 0; i < options.size(); i++) {
            add(row(i + 1, options.get(i)));
        }
    }

    private static NativeTableRow head() {
        var head = new NativeTableRow(header(Texts.text("plan.column.option"), "col"));
        OptionCells.groups()
                .forEach(group -> head.add(
                        header(String.join(", ", group.stream().map(Texts::of).toList()), "col")));
        return role(head, "row");
    }

    private static NativeTableRow row(int number, OptionCells option) {
        var row = new NativeTableRow(header(Texts.text("plan.number", number, Texts.of(option.option())), "row"));
        OptionCells.groups().forEach(group -> row.add(cell(group, option)));
        return role(row, "row");
    }

    private static NativeTableCell cell(List<Column> group, OptionCells option) {
        var cell = new NativeTableCell();
        group.stream()
                .filter(column -> !option.of(column).isEmpty())
                .map(column -> part(column, option.of(column)))
                .forEach(cell::add);
        cell.getElement().setAttribute("role", "cell");
        return cell;
    }

    private static Component part(Column column, List<String> lines) {
        if (column == Column.EVIDENCE) {
            return new Details(Texts.of(column), Parts.lines(lines));
        }
        var label = new Span(Texts.of(column));
        label.addClassName("plan-label");
        var part = new Div(label, Parts.lines(lines));
        part.addClassName("plan-part");
        return part;
    }

    private static NativeTableHeaderCell header(String text, String scope) {
        var header = new NativeTableHeaderCell(text);
        header.getElement().setAttribute("scope", scope);
        header.getElement().setAttribute("role", scope.equals("row") ? "rowheader" : "columnheader");
        return header;
    }

    private static NativeTableRow role(NativeTableRow row, String role) {
        row.getElement().setAttribute("role", role);
        return row;
    }
}
