package org.espalier.prognosis.ui;

import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCaption;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.time.LocalDate;
import java.util.List;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;

/** An angle on days to come: middle, where half of the chance lies, where nine tenths lie. */
class AngleTable extends NativeTable {

    /** One line, in words. */
    record Line(LocalDate day, String middle, String half, String most) {}

    AngleTable(String caption, List<Line> lines) {
        addClassName("prognosis-angles");
        var title = new NativeTableCaption();
        title.setText(caption);
        add(title);
        add(new NativeTableRow(
                header("prognosis.column.day", "col"),
                header("prognosis.column.middle", "col"),
                header("prognosis.column.half", "col"),
                header("prognosis.column.most", "col")));
        lines.forEach(line -> add(new NativeTableRow(
                header(DateText.of(line.day())), cell(line.middle()), cell(line.half()), cell(line.most()))));
    }

    private static NativeTableHeaderCell header(String key, String scope) {
        var header = new NativeTableHeaderCell(Texts.text(key));
        header.getElement().setAttribute("scope", scope);
        return header;
    }

    private static NativeTableHeaderCell header(String text) {
        var header = new NativeTableHeaderCell(text);
        header.getElement().setAttribute("scope", "row");
        return header;
    }

    private static NativeTableCell cell(String text) {
        return new NativeTableCell(text);
    }
}
