package org.espalier.stock.ui;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Route;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.LabelService;
import org.espalier.stock.StockService;
import org.espalier.stock.StockTransferService;

/** What came in, what is carried from shelf to shelf, what is sent to another hospital? One label at a time. */
@Route(Urls.STOCK_MOVE)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class MoveView extends StockPage {

    private final StockService stock;
    private final StockTransferService transfers;
    private final CatalogueService catalogue;
    private final LabelService labels;
    private final SiteService siteService;

    MoveView(
            StockService stock,
            StockTransferService transfers,
            CatalogueService catalogue,
            LabelService labels,
            StockSites sites,
            SiteService siteService) {
        super(sites, "stock.move-in");
        this.stock = stock;
        this.transfers = transfers;
        this.catalogue = catalogue;
        this.labels = labels;
        this.siteService = siteService;
    }

    @Override
    protected void show(Site here, Div body) {
        if (!sites().keeps(here.id())) {
            body.add(PageParts.empty("stock.not-the-keeper"));
            return;
        }
        var today = siteService.today(here.id());
        body.add(
                PageParts.part(
                        Texts.text("stock.came-in"), new ArrivalForm(this, stock, catalogue, labels, here, today)),
                PageParts.part(
                        Texts.text("stock.carry"), new CarryForm(this, stock, transfers, catalogue, labels, here)),
                PageParts.part(
                        Texts.text("stock.latest"),
                        new MovementTable(this, stock, here, true).with(stock.latest(here.id()))));
    }
}
