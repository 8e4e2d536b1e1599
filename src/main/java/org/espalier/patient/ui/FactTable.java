package org.espalier.patient.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.Fact;
import org.espalier.patient.Finding;
import org.espalier.patient.History;

/** Facts of one kind, the latest first; what was superseded stays, struck through, with the reason. */
final class FactTable<F extends Finding> extends Composite<Div> {

    /** What a column shows of a finding. */
    record Column<F>(String heading, Function<F, String> text) {}

    private final List<Column<F>> columns;
    private final Consumer<Fact<F>> correct;
    private final Consumer<Fact<F>> withdraw;

    FactTable(List<Column<F>> columns, Consumer<Fact<F>> correct, Consumer<Fact<F>> withdraw) {
        this.columns = List.copyOf(columns);
        this.correct = correct;
        this.withdraw = withdraw;
    }

    void show(History<F> history, String nothing) {
        getContent().removeAll();
        if (history.facts().isEmpty()) {
            getContent().add(PageParts.paragraph("empty", nothing));
            return;
        }
        var standing = new HashSet<>(history.standing());
        var table = new NativeTable();
        table.addClassName("facts");
        table.getHead().add(heading());
        history.facts().stream()
                .sorted(Comparator.<Fact<F>, LocalDate>comparing(Fact::on)
                        .thenComparing(Fact::at)
                        .reversed())
                .forEach(fact -> table.getBody().add(row(fact, standing.contains(fact))));
        getContent().add(table);
    }

    private NativeTableRow heading() {
        var row = new NativeTableRow();
        row.add(new NativeTableHeaderCell(Texts.text("patient.on")));
        columns.forEach(column -> row.add(new NativeTableHeaderCell(Texts.text(column.heading()))));
        row.add(new NativeTableHeaderCell(Texts.text("patient.by")), new NativeTableHeaderCell());
        return row;
    }

    private NativeTableRow row(Fact<F> fact, boolean stands) {
        var row = new NativeTableRow();
        var day = cell("patient.on", DateText.of(fact.on()));
        day.addClassName("day");
        row.add(day);
        var finding = fact.finding();
        if (finding == null) {
            row.add(withdrawn());
        } else {
            columns.forEach(
                    column -> row.add(cell(column.heading(), column.text().apply(finding))));
        }
        row.add(cell("patient.by", by(fact)));
        var actions = new NativeTableCell();
        if (stands) {
            actions.add(button("patient.correct", correct, fact), button("patient.withdraw", withdraw, fact));
        } else if (finding != null) {
            row.addClassName("superseded");
        }
        row.add(actions);
        return row;
    }

    private NativeTableCell withdrawn() {
        var cell = new NativeTableCell(Texts.text("patient.withdrawn"));
        cell.setColspan(columns.size());
        return cell;
    }

    private static String by(Fact<?> fact) {
        var by = fact.by() == null ? Texts.text("patient.by.house") : fact.by();
        return fact.reason() == null ? by : Texts.text("patient.by.reason", by, fact.reason());
    }

    private static NativeTableCell cell(String heading, String text) {
        var cell = new NativeTableCell(text);
        cell.getElement().setAttribute("data-heading", Texts.text(heading));
        return cell;
    }

    private static <T> Component button(String text, Consumer<T> action, T subject) {
        var button = new Button(Texts.text(text), click -> action.accept(subject));
        button.addClassName("link");
        return button;
    }
}
