package org.espalier.stock.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.Route;
import org.espalier.access.Site;
import org.espalier.kit.DateText;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Lot;
import org.espalier.stock.LotId;
import org.espalier.stock.LotUse;
import org.espalier.stock.ShelfLine;
import org.espalier.stock.StockService;
import org.espalier.stock.UseService;

/** Where does this lot lie here, and where did it go? Operations stand by a number of their own, never by a child. */
@Route(Urls.STOCK_LOT)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class LotView extends StockPage {

    private final CatalogueService catalogue;
    private final StockService stock;
    private final UseService uses;

    LotView(CatalogueService catalogue, StockService stock, UseService uses, StockSites sites) {
        super(sites, "stock.lot");
        this.catalogue = catalogue;
        this.stock = stock;
        this.uses = uses;
    }

    @Override
    protected void show(Site here, Div body) {
        askedId("lot")
                .map(LotId::new)
                .flatMap(catalogue::lot)
                .ifPresentOrElse(lot -> show(here, lot, body), () -> body.add(PageParts.empty("stock.no-such-lot")));
    }

    private void show(Site here, Lot lot, Div body) {
        head(Texts.text("stock.lot-number", lot.number()));
        var product = catalogue.product(lot.product()).orElseThrow();
        var of = new Paragraph(link(here, product));
        var expires = lot.expires();
        of.add(new Span(" · "
                + (expires == null
                        ? Texts.text("stock.never-expires")
                        : Texts.text("stock.expires-on", DateText.of(expires)))));
        body.add(of);
        if (!lot.held() && sites().mayHold(here.id())) {
            body.add(new Anchor(Urls.SAFETY + "?lot=" + lot.id().value(), Texts.text("stock.to-safety")));
        }
        if (lot.held()) {
            var held = new Div(Texts.text("stock.held.what"));
            held.addClassNames("notice", "harm");
            body.add(held);
        }
        body.add(
                PageParts.part(Texts.text("stock.lies-there", here.name()), lines(here, lot)),
                PageParts.part(Texts.text("stock.went-into"), wentInto(lot)),
                PageParts.part(
                        Texts.text("stock.latest"),
                        new MovementTable(this, stock, here, false).with(stock.historyOfLot(here.id(), lot.id()))));
    }

    private Component lines(Site here, Lot lot) {
        var shelves = stock.shelves(here.id());
        return new LineTable<ShelfLine>("stock.nowhere")
                .ordered("stock.ordered.expiry")
                .text("stock.shelf", line -> shelves.stream()
                        .filter(shelf -> shelf.id().equals(line.shelf()))
                        .findFirst()
                        .map(StockText::of)
                        .orElseGet(() -> Texts.text("stock.on-the-way")))
                .text("stock.lot", StockText::lots)
                .count("stock.pieces", ShelfLine::quantity)
                .with(stock.ofLot(here.id(), lot.id()));
    }

    private Component wentInto(Lot lot) {
        return new LineTable<LotUse>("stock.went-into.none")
                .ordered("stock.ordered.first")
                .text("stock.operation", use -> StockText.operation(use.holder()))
                .count("stock.pieces", LotUse::quantity)
                .text("stock.certain", use -> Texts.text(use.certain() ? "stock.certainly" : "stock.possibly"))
                .with(uses.ofLot(lot.id()));
    }
}
