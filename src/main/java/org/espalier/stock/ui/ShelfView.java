package org.espalier.stock.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.router.Route;
import java.util.Optional;
import org.espalier.access.Site;
import org.espalier.kit.DateText;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.CountService;
import org.espalier.stock.CountSheet;
import org.espalier.stock.Lot;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfId;
import org.espalier.stock.ShelfKind;
import org.espalier.stock.ShelfLine;
import org.espalier.stock.StockService;

/** What lies on this shelf, and what was counted? */
@Route(Urls.STOCK_SHELF)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class ShelfView extends StockPage {

    private final StockService stock;
    private final CountService counts;

    ShelfView(StockService stock, CountService counts, StockSites sites) {
        super(sites, "stock.shelf");
        this.stock = stock;
        this.counts = counts;
    }

    @Override
    protected void show(Site here, Div body) {
        askedId("shelf")
                .map(ShelfId::new)
                .flatMap(stock::shelf)
                .ifPresentOrElse(shelf -> show(shelf, body), () -> body.add(PageParts.empty("stock.no-such-shelf")));
    }

    private void show(Shelf shelf, Div body) {
        head(StockText.of(shelf));
        boolean keeps = sites().keeps(shelf.site());
        var sheet = keeps ? counts.openOf(shelf.id()) : Optional.<CountSheet>empty();
        body.add(PageParts.part(
                Texts.text("stock.lies-there", sites().get(shelf.site()).name()),
                sheet.map(open -> counting(shelf, open)).orElseGet(() -> lines(shelf))));
        if (keeps && sheet.isEmpty()) {
            body.add(actions(shelf));
            if (shelf.kind().isUsable()) {
                body.add(PageParts.part(
                        Texts.text("stock.change-shelf"),
                        new ShelfForm(
                                Optional.of(shelf),
                                sites().today(shelf.site()),
                                data -> act(() -> stock.changeShelf(shelf, data), "stock.done"))));
            }
        }
        if (keeps) {
            counts.closedOf(shelf.id()).forEach(closed -> body.add(differences(shelf, closed)));
        }
    }

    private Component lines(Shelf shelf) {
        return new ShelfLines(
                part -> stock.find(shelf.id(), part), nothing -> table(sites().get(shelf.site()), nothing));
    }

    private static LineTable<ShelfLine> table(Site here, String nothing) {
        return new LineTable<ShelfLine>(nothing)
                .ordered("stock.ordered.lines")
                .show("stock.product", line -> link(here, line.product()))
                .text("stock.size", line -> StockText.size(line.product().data()))
                .show("stock.lot", line -> lot(here, line))
                .text("stock.expires", StockText::expiry)
                .count("stock.pieces", ShelfLine::quantity);
    }

    private static Component lot(Site here, ShelfLine line) {
        return line.lot()
                .<Component>map(lot -> link(here, lot))
                .orElseGet(() -> new com.vaadin.flow.component.html.Span(StockText.lots(line)));
    }

    private Component actions(Shelf shelf) {
        var actions = new Div();
        actions.addClassName("actions");
        if (shelf.kind() != ShelfKind.IN_TRANSIT) {
            actions.add(new Button(
                    Texts.text("stock.count"), click -> act(() -> counts.open(shelf.id()), "stock.count.begun")));
        }
        if (shelf.kind() == ShelfKind.TRAY && !shelf.sterilising()) {
            actions.add(new Button(
                    Texts.text("stock.to-sterilise"), click -> act(() -> stock.sterilise(shelf.id()), "stock.done")));
        }
        if (shelf.kind() == ShelfKind.TRAY && shelf.sterilising()) {
            actions.add(new Button(
                    Texts.text("stock.tray-is-back"), click -> act(() -> stock.trayIsBack(shelf.id()), "stock.done")));
        }
        if (shelf.kind().isUsable() && shelf.closedOn() == null) {
            actions.add(new Button(
                    Texts.text("stock.close-shelf"), click -> act(() -> stock.closeShelf(shelf), "stock.done")));
        }
        return actions;
    }

    /** The books are not shown beside what is counted, so that nobody counts what they say. */
    private Component counting(Shelf shelf, CountSheet sheet) {
        var how = new Paragraph(Texts.text("stock.count.how", sheet.openedBy()));
        var lines = new ShelfLines(part -> stock.find(shelf.id(), part), nothing -> new LineTable<ShelfLine>(nothing)
                .ordered("stock.ordered.lines")
                .text("stock.product", line -> StockText.of(line.product()))
                .text("stock.size", line -> StockText.size(line.product().data()))
                .text("stock.lot", StockText::lots)
                .show("stock.counted", line -> counted(sheet, line)));
        var close = new Button(
                Texts.text("stock.count.close"), click -> act(() -> counts.close(sheet.id()), "stock.count.closed"));
        var print = new Button(Texts.text("stock.count.print"));
        print.addClickListener(click -> print.getElement().executeJs("window.print()"));
        var actions = new Div(close, print);
        actions.addClassNames("actions", "no-print");
        return new Div(how, signature(shelf, sheet), lines, actions);
    }

    /** On paper alone: whose shelf, when, and who counted. */
    private Component signature(Shelf shelf, CountSheet sheet) {
        var site = sites().get(shelf.site());
        var signed =
                new Paragraph(Texts.text("stock.count.sign", site.name(), StockText.at(sheet.openedAt(), site.zone())));
        signed.addClassName("only-printed");
        return signed;
    }

    private Component counted(CountSheet sheet, ShelfLine line) {
        var lot = line.lot().map(Lot::id);
        var field = new IntegerField();
        field.setAriaLabel(Texts.text("stock.counted-of", StockText.of(line.product()), StockText.lots(line)));
        field.setMin(0);
        field.setErrorMessage(Texts.text("stock.count.whole"));
        sheet.lines().stream()
                .filter(one -> one.product().id().equals(line.product().id())
                        && one.lot().map(Lot::id).equals(lot))
                .findFirst()
                .ifPresent(one -> field.setValue(one.counted()));
        field.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() == null) {
                field.setValue(change.getOldValue());
            } else if (change.isFromClient() && change.getValue() >= 0) {
                counts.count(sheet.id(), line.product().id(), lot, change.getValue());
            }
        });
        return field;
    }

    private Component differences(Shelf shelf, CountSheet sheet) {
        var zone = sites().get(shelf.site()).zone();
        var on = DateText.of(
                sheet.closedAt().orElse(sheet.openedAt()).atZone(zone).toLocalDate());
        return PageParts.part(
                Texts.text("stock.counted-on", on, sheet.openedBy()),
                new LineTable<CountSheet.Line>("stock.nothing-counted")
                        .text("stock.product", line -> StockText.of(line.product()))
                        .text(
                                "stock.lot",
                                line -> StockText.lots(line.lot().stream().toList()))
                        .count("stock.in-the-books", CountSheet.Line::expected)
                        .count("stock.counted", CountSheet.Line::counted)
                        .count("stock.difference", CountSheet.Line::difference)
                        .with(sheet.lines()));
    }
}
