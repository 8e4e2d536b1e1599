package org.espalier.stock.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.Route;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.Coverage;
import org.espalier.stock.OrderService;
import org.espalier.stock.ReservationService;

/** What do planned operations need, which would be left short, and what do operations use? */
@Route(Urls.STOCK_NEEDS)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class NeedsView extends StockPage {

    private final ReservationService reservations;
    private final OrderService orders;
    private final SiteService siteService;

    NeedsView(ReservationService reservations, OrderService orders, StockSites sites, SiteService siteService) {
        super(sites, "stock.needs");
        this.reservations = reservations;
        this.orders = orders;
        this.siteService = siteService;
    }

    @Override
    protected void show(Site here, Div body) {
        var caution = new Paragraph(Texts.text("stock.needs.caution"));
        caution.addClassName("caution");
        body.add(
                PageParts.part(Texts.text("stock.planned"), planned(here)),
                PageParts.part(
                        Texts.text("stock.reserve"),
                        new ReservationForm(this, reservations, here, siteService.today(here.id()))),
                PageParts.part(Texts.text("stock.orders"), new OrderPanel(orders, here)),
                caution);
    }

    private Component planned(Site here) {
        return new LineTable<Coverage.Met>("stock.planned.none")
                .ordered("stock.ordered.day")
                .text("stock.operation-on", met -> DateText.of(met.reservation().neededOn()))
                .text(
                        "stock.operation",
                        met -> StockText.operation(met.reservation().holder()))
                .text("stock.needed", met -> StockText.of(met.need()))
                .count("stock.quantity", met -> met.need().quantity())
                .text(
                        "stock.state",
                        met -> met.missing() == 0
                                ? Texts.text("stock.enough")
                                : Texts.text("stock.missing-pieces", met.missing()))
                .show(
                        "stock.note",
                        met -> link(
                                "stock.end-reservation",
                                () -> act(
                                        () -> reservations.end(met.reservation().holder()), "stock.done")))
                .with(reservations.coverage(here.id()));
    }
}
