package org.espalier.stock.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.List;
import java.util.function.Function;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.stock.ShelfLine;
import org.espalier.stock.StockService;

/** The lines of a shelf, and a way to the ones wanted where they are many; what is left out is said. */
final class ShelfLines extends Composite<Div> {

    private static final int AT_A_GLANCE = 15;

    private final transient Function<String, List<ShelfLine>> find;
    private final transient Function<String, LineTable<ShelfLine>> table;
    private final TextField part = new TextField(Texts.text("stock.find-on-shelf"));
    private final Div found = new Div();

    /**
     * @param find lines with the part in name, reference or lot; all for an empty one
     * @param table an empty table that says the given text when it stays so
     */
    ShelfLines(Function<String, List<ShelfLine>> find, Function<String, LineTable<ShelfLine>> table) {
        this.find = find;
        this.table = table;
        part.setHelperText(Texts.text("stock.find-on-shelf.help"));
        part.setClearButtonVisible(true);
        part.setValueChangeMode(ValueChangeMode.LAZY);
        part.addValueChangeListener(change -> show(find.apply(part.getValue())));
        part.addClassName("no-print");
        found.getElement().setAttribute("aria-live", "polite");
        getContent().addClassName("parts");
        getContent().add(part, found);
        var all = find.apply("");
        part.setVisible(all.size() > AT_A_GLANCE);
        show(all);
    }

    private void show(List<ShelfLine> lines) {
        found.removeAll();
        if (lines.size() == StockService.MOST_LINES) {
            found.add(PageParts.said(Texts.text("stock.first-lines", StockService.MOST_LINES)));
        }
        found.add(table.apply(part.isEmpty() ? "stock.empty-shelf" : "stock.nothing-found")
                .with(lines));
    }
}
