package org.espalier.stock.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.router.Route;
import java.util.Optional;
import org.espalier.access.Site;
import org.espalier.kit.DateText;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.LabelService;
import org.espalier.stock.Lot;
import org.espalier.stock.Product;
import org.espalier.stock.ProductCode;
import org.espalier.stock.ProductId;
import org.espalier.stock.ShelfLine;
import org.espalier.stock.StockService;

/** What is this product, where does it lie here, and what became of it? */
@Route(Urls.STOCK_PRODUCT)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class ProductView extends StockPage {

    private final CatalogueService catalogue;
    private final StockService stock;
    private final LabelService labels;

    ProductView(CatalogueService catalogue, StockService stock, LabelService labels, StockSites sites) {
        super(sites, "stock.product");
        this.catalogue = catalogue;
        this.stock = stock;
        this.labels = labels;
    }

    @Override
    protected void show(Site here, Div body) {
        askedId("product")
                .map(ProductId::new)
                .flatMap(catalogue::product)
                .ifPresentOrElse(
                        product -> show(here, product, body), () -> body.add(PageParts.empty("stock.no-such-product")));
    }

    private void show(Site here, Product product, Div body) {
        head(StockText.of(product));
        boolean keeps = sites().keeps(here.id());
        var what = new Paragraph(StockText.what(product.data()));
        what.addClassName("question");
        body.add(what, PageParts.part(Texts.text("stock.lies-there", here.name()), lines(here, product)));
        body.add(PageParts.part(Texts.text("stock.lots"), lots(here, product)));
        body.add(PageParts.part(Texts.text("stock.codes"), codes(product, keeps)));
        body.add(PageParts.part(
                Texts.text("stock.latest"),
                new MovementTable(this, stock, here, keeps).with(stock.history(here.id(), product.id()))));
        if (keeps) {
            body.add(PageParts.part(
                    Texts.text("stock.change-product"),
                    new ProductForm(
                            Optional.of(product.data()),
                            data -> act(() -> catalogue.change(product, data), "stock.done"))));
        }
    }

    private Component lines(Site here, Product product) {
        var shelves = stock.shelves(here.id());
        return new LineTable<ShelfLine>("stock.nowhere")
                .ordered("stock.ordered.expiry")
                .text("stock.shelf", line -> shelves.stream()
                        .filter(shelf -> shelf.id().equals(line.shelf()))
                        .findFirst()
                        .map(StockText::of)
                        .orElseGet(() -> Texts.text("stock.on-the-way")))
                .text("stock.lot", StockText::lots)
                .text("stock.expires", StockText::expiry)
                .count("stock.pieces", ShelfLine::quantity)
                .with(stock.of(here.id(), product.id()));
    }

    private Component lots(Site here, Product product) {
        return new LineTable<Lot>("stock.no-lots")
                .ordered("stock.ordered.expiry")
                .show("stock.lot", lot -> link(here, lot))
                .text("stock.expires", lot -> lot.expires() == null ? "" : DateText.of(lot.expires()))
                .text("stock.state", lot -> lot.held() ? Texts.text("stock.held") : "")
                .with(catalogue.lots(product.id()));
    }

    private Component codes(Product product, boolean keeps) {
        var table = new LineTable<ProductCode>("stock.no-codes")
                .text("stock.scheme", code -> Texts.of(code.scheme()))
                .text("stock.code", ProductCode::code)
                .show("stock.note", code -> {
                    var forget = link(
                            "stock.forget-code",
                            () -> act(() -> catalogue.removeCode(product.id(), code), "stock.done"));
                    forget.setVisible(keeps);
                    return forget;
                })
                .with(catalogue.codes(product.id()));
        var scan = new TextField(Texts.text("stock.learn-code"));
        scan.setHelperText(Texts.text("stock.learn-code.help"));
        scan.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        scan.addValueChangeListener(change -> learn(product, change.getValue()));
        scan.setVisible(keeps);
        return new Div(table, scan);
    }

    private void learn(Product product, String typed) {
        if (typed.isBlank()) {
            return;
        }
        var label = labels.read(typed);
        var code = label.code();
        if (code.isEmpty()) {
            say(label.problem().orElseGet(() -> Texts.text("stock.no-code")), true);
            return;
        }
        var owner = catalogue.addCode(product.id(), code.get());
        boolean learnt = owner.filter(one -> one.id().equals(product.id())).isPresent();
        say(
                learnt
                        ? Texts.text("stock.code-learnt")
                        : Texts.text(
                                "stock.code-taken", owner.map(StockText::of).orElse("")),
                !learnt);
        refresh();
    }
}
