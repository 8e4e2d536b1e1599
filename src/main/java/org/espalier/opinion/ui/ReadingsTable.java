package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.BlindReading;
import org.espalier.reading.NumberText;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;

/** How each who read a film blind read it, number beside number, with the published error of a second reading. */
class ReadingsTable extends Composite<Div> {

    ReadingsTable(List<BlindReading> readings) {
        var table = new NativeTable();
        var head = new NativeTableRow();
        head.add(heading(Texts.text("opinion.readings.number"), "col"));
        readings.forEach(one -> head.add(heading(one.name(), "col")));
        head.add(heading(Texts.text("opinion.readings.error"), "col"));
        table.add(head);
        for (var quantity : Quantity.values()) {
            for (var side : Side.values()) {
                if (readings.stream().anyMatch(one -> one.value(side, quantity).isPresent())) {
                    table.add(row(readings, side, quantity));
                }
            }
        }
        getContent().addClassName("readings");
        getContent().add(PageParts.paragraph("small", Texts.text("opinion.readings")), table);
        getContent().getElement().setAttribute("tabindex", "0");
        getContent().getElement().setAttribute("role", "group");
        getContent().getElement().setAttribute("aria-label", Texts.text("opinion.readings"));
    }

    private static NativeTableRow row(List<BlindReading> readings, Side side, Quantity quantity) {
        var row = new NativeTableRow();
        row.add(heading(Texts.text("opinion.number", Texts.of(side), NumberText.label(quantity)), "row"));
        readings.forEach(one -> {
            var value = one.value(side, quantity);
            row.add(new NativeTableCell(
                    value.isPresent() ? NumberText.of(quantity, value.getAsDouble()) : Texts.text("opinion.not-read")));
        });
        row.add(new NativeTableCell(
                NumberText.error(quantity).orElseGet(() -> Texts.text("opinion.error.unpublished"))));
        return row;
    }

    private static NativeTableHeaderCell heading(String text, String scope) {
        var heading = new NativeTableHeaderCell(text);
        heading.getElement().setAttribute("scope", scope);
        return heading;
    }
}
