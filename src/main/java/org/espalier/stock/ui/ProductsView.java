package org.espalier.stock.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.util.Map;
import java.util.Optional;
import org.espalier.access.Site;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.LabelService;
import org.espalier.stock.Lot;
import org.espalier.stock.Product;

/** What is there in the network's catalogue? A label that is scanned leads to its product, a number to its lot. */
@Route(Urls.STOCK_PRODUCTS)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class ProductsView extends StockPage {

    private final CatalogueService catalogue;
    private final LabelService labels;

    ProductsView(CatalogueService catalogue, LabelService labels, StockSites sites) {
        super(sites, "stock.catalogue");
        this.catalogue = catalogue;
        this.labels = labels;
    }

    @Override
    protected void show(Site here, Div body) {
        var text = asked("find").orElse("");
        var find = new TextField(Texts.text("stock.find"));
        find.setHelperText(Texts.text("stock.find.help"));
        find.setValue(text);
        find.setWidthFull();
        find.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        find.addValueChangeListener(change -> find(here, change.getValue()));
        body.add(find);
        var products = catalogue.search(text, Optional.empty());
        body.add(PageParts.part(
                Texts.text("stock.products-found", products.size()),
                new LineTable<Product>("stock.no-products")
                        .ordered("stock.ordered.products")
                        .show("stock.product", one -> link(here, one))
                        .text("stock.kind", one -> Texts.of(one.data().kind()))
                        .text("stock.size", one -> StockText.size(one.data()))
                        .text("stock.magnet", one -> Texts.of(one.data().magnet()))
                        .with(products)));
        var lots = catalogue.searchLots(text);
        if (!lots.isEmpty()) {
            body.add(PageParts.part(
                    Texts.text("stock.lots"),
                    new LineTable<Lot>("stock.no-lots")
                            .ordered("stock.ordered.lots")
                            .show("stock.lot", one -> link(here, one))
                            .text("stock.product", one -> catalogue
                                    .product(one.product())
                                    .map(StockText::of)
                                    .orElse(""))
                            .with(lots.stream().limit(20).toList())));
        }
        if (sites().keeps(here.id())) {
            body.add(PageParts.part(
                    Texts.text("stock.new-product"),
                    new ProductForm(Optional.empty(), data -> act(() -> catalogue.add(data), "stock.added"))));
        }
    }

    private void find(Site here, String text) {
        var scanned = labels.read(text).product();
        if (scanned.isPresent()) {
            go(here, Urls.STOCK_PRODUCT, "product", scanned.get().id().value().toString());
            return;
        }
        UI.getCurrent()
                .navigate(
                        Urls.STOCK_PRODUCTS, QueryParameters.simple(Map.of("find", text.strip(), "site", here.code())));
    }
}
