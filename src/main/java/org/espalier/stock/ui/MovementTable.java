package org.espalier.stock.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.UUID;
import org.espalier.access.Site;
import org.espalier.kit.LineTable;
import org.espalier.kit.Texts;
import org.espalier.stock.Movement;
import org.espalier.stock.StockService;

/** Movements, the latest first; a storekeeper takes one back by another. */
final class MovementTable extends Composite<Div> {

    private final StockPage page;
    private final transient StockService stock;
    private final Site here;
    private final boolean keeps;

    MovementTable(StockPage page, StockService stock, Site here, boolean keeps) {
        this.page = page;
        this.stock = stock;
        this.here = here;
        this.keeps = keeps;
    }

    MovementTable with(List<Movement> movements) {
        getContent()
                .add(new LineTable<Movement>("stock.latest.none")
                        .ordered("stock.ordered.latest")
                        .text("stock.when", one -> StockText.at(one.at(), here.zone()))
                        .show("stock.product", one -> StockPage.link(here, one.product()))
                        .text("stock.lot", one -> StockText.lots(one.lots()))
                        .count("stock.pieces", Movement::quantity)
                        .text("stock.from-to", MovementTable::way)
                        .text("stock.by", one -> one.by().orElseGet(() -> Texts.text("stock.by.house")))
                        .show("stock.note", this::note)
                        .with(movements));
        return this;
    }

    private static String way(Movement one) {
        var way = Texts.text("stock.way", StockText.of(one.from()), StockText.of(one.to()));
        return one.holder()
                .map(holder -> Texts.text("stock.way-for", way, StockText.operation(holder)))
                .orElse(way);
    }

    private Component note(Movement one) {
        var note = new Div();
        one.why().ifPresent(why -> note.add(new Span(why)));
        if (one.reverses().isPresent()) {
            note.add(new Span(Texts.text("stock.takes-back")));
        } else if (one.reversed()) {
            note.add(new Span(Texts.text("stock.taken-back")));
        } else if (keeps
                && one.holder().isEmpty()
                && one.from().site().equals(one.to().site())) {
            note.add(StockPage.link(
                    "stock.take-back",
                    () -> page.act(
                            () -> stock.takeBack(one, UUID.randomUUID(), Texts.text("stock.take-back.why")),
                            "stock.done")));
        }
        return note;
    }
}
