package org.espalier.reading.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import org.espalier.kit.Texts;
import org.espalier.reading.NumberText;
import org.espalier.reading.TwoReaders;

/** A film that two have read blind: how far they differ, beside how far readers are known to. */
class TwoReadersPanel extends Composite<Details> {

    TwoReadersPanel(TwoReaders readers) {
        var table = new NativeTable();
        table.add(headers(
                "",
                readers.first().readerName(),
                readers.second().readerName(),
                Texts.text("reading.two.difference"),
                Texts.text("reading.two.published")));
        readers.pairs().forEach(pair -> table.add(row(pair)));
        table.addClassName("sign-numbers");
        var scrolling = new Div(table);
        scrolling.addClassName("room-two");
        scrolling.getElement().setAttribute("tabindex", "0");
        scrolling.getElement().setAttribute("role", "group");
        scrolling.getElement().setAttribute("aria-label", Texts.text("reading.two"));
        getContent().setSummaryText(Texts.text("reading.two"));
        getContent().add(scrolling);
        getContent().addClassName("room-fold");
    }

    private static NativeTableRow row(TwoReaders.Pair pair) {
        var name = new NativeTableHeaderCell(
                Texts.text("reading.caution.limb", Texts.of(pair.side()), NumberText.label(pair.quantity())));
        name.getElement().setAttribute("scope", "row");
        var difference = new NativeTableCell(NumberText.brief(pair.quantity(), pair.difference()));
        if (pair.isBeyondPublished()) {
            difference.setText(Texts.text("reading.two.beyond", difference.getText()));
            difference.addClassName("soon");
        }
        var row = new NativeTableRow();
        row.add(
                name,
                new NativeTableCell(NumberText.of(pair.quantity(), pair.first())),
                new NativeTableCell(NumberText.of(pair.quantity(), pair.second())),
                difference,
                new NativeTableCell(
                        pair.published().isPresent()
                                ? Texts.text(
                                        "reading.error",
                                        NumberText.brief(
                                                pair.quantity(),
                                                pair.published().getAsDouble()))
                                : Texts.text("reading.two.unpublished")));
        return row;
    }

    private static NativeTableRow headers(String... texts) {
        var row = new NativeTableRow();
        for (String text : texts) {
            var header = new NativeTableHeaderCell(text);
            header.getElement().setAttribute("scope", "col");
            row.add(header);
        }
        return row;
    }
}
