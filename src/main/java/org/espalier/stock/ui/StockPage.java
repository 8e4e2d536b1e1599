package org.espalier.stock.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.router.QueryParameters;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.access.Site;
import org.espalier.kit.PageParts;
import org.espalier.kit.PageParts.Place;
import org.espalier.kit.PlacesPage;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.Lot;
import org.espalier.stock.Product;
import org.espalier.stock.ShelfId;
import org.espalier.stock.StockRefusal;

/** A screen of the stock. */
abstract class StockPage extends PlacesPage<Site> {

    private static final Map<String, String> PLACES = new LinkedHashMap<>();

    static {
        PLACES.put(Urls.STOCK, "stock.shelves");
        PLACES.put(Urls.STOCK_PRODUCTS, "stock.catalogue");
        PLACES.put(Urls.STOCK_NEEDS, "stock.needs");
    }

    private final StockSites sites;

    StockPage(StockSites sites, String title) {
        super(title, "stock");
        this.sites = sites;
    }

    final StockSites sites() {
        return sites;
    }

    /** The id the address asks for under a name. */
    final Optional<UUID> askedId(String name) {
        try {
            return asked(name).map(UUID::fromString);
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    /** Goes to another screen about one thing here. */
    static void go(Site here, String url, String name, String value) {
        UI.getCurrent().navigate(url, QueryParameters.simple(Map.of(name, value, "site", here.code())));
    }

    /** The product, and where it lies here. */
    static Anchor link(Site here, Product product) {
        var url = Urls.stockProduct(product.id().value());
        return new Anchor(Urls.at(url, Optional.of(here.code())), StockText.of(product));
    }

    /** The lot, and where it lies here. */
    static Anchor link(Site here, Lot lot) {
        return new Anchor(Urls.at(Urls.stockLot(lot.id().value()), Optional.of(here.code())), lot.number());
    }

    /** The shelf, whose text stands there. */
    static Anchor link(Site here, ShelfId shelf, String text) {
        return new Anchor(Urls.at(Urls.stockShelf(shelf.value()), Optional.of(here.code())), text);
    }

    /** Does something and says what came of it; what was typed stays when it is refused. */
    final void act(Runnable deed, String done) {
        try {
            deed.run();
            say(Texts.text(done), false);
            refresh();
        } catch (StockRefusal refusal) {
            say(refusal.text(), true);
        }
    }

    static Button link(String key, Runnable deed) {
        var button = new Button(Texts.text(key), click -> deed.run());
        button.addClassName("link");
        return button;
    }

    @Override
    protected final List<Site> hospitals() {
        return sites.mine();
    }

    @Override
    protected final String code(Site hospital) {
        return hospital.code();
    }

    @Override
    protected final String name(Site hospital) {
        return hospital.name();
    }

    /** A shelf is one hospital's alone. */
    @Override
    protected final String elsewhere(String place) {
        return place.equals(Urls.STOCK_SHELF) ? Urls.STOCK : place;
    }

    @Override
    protected final Component nowhere() {
        return PageParts.empty("stock.no-hospital");
    }

    @Override
    protected final Component places(Optional<Site> site, String title) {
        var code = site.map(Site::code);
        var own = PLACES.entrySet().stream().map(place -> place(place.getKey(), place.getValue(), code, title));
        var keeping = site.filter(one -> sites.keeps(one.id())).stream()
                .map(one -> place(Urls.STOCK_MOVE, "stock.move-in", code, title));
        return PageParts.places(
                Texts.text("stock.places"), Stream.concat(own, keeping).toList());
    }

    private static Place place(String url, String key, Optional<String> code, String title) {
        return new Place(Urls.at(url, code), Texts.text(key), key.equals(title));
    }
}
