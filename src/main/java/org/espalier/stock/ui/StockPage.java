package org.espalier.stock.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.QueryParameters;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.Site;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.StockRefusal;

/** A screen of the stock: its places, what was answered last, and its parts, shown anew after each deed. */
abstract class StockPage extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private static final Map<String, String> PLACES = new java.util.LinkedHashMap<>();

    static {
        PLACES.put(Urls.STOCK, "stock.shelves");
        PLACES.put(Urls.STOCK_PRODUCTS, "stock.catalogue");
        PLACES.put(Urls.STOCK_NEEDS, "stock.needs");
    }

    private final StockSites sites;
    private final String title;
    private final Div answer = new Div();
    private final Div body = new Div();
    private final H1 heading = new H1();
    private Optional<Site> site = Optional.empty();
    private Map<String, String> asked = Map.of();

    StockPage(StockSites sites, String title) {
        this.sites = sites;
        this.title = title;
        answer.getElement().setAttribute("role", "status");
        answer.setVisible(false);
        body.addClassName("parts");
        getContent().addClassNames("screen", "stock");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var parameters = event.getLocation().getQueryParameters();
        asked = parameters.getParameters().entrySet().stream()
                .collect(java.util.stream.Collectors.toMap(
                        Map.Entry::getKey, one -> one.getValue().getFirst()));
        site = sites.of(parameters.getSingleParameter("site"));
        getContent().removeAll();
        heading.setText(Texts.text(title));
        getContent().add(heading, places(), answer, body);
        refresh();
    }

    @Override
    public String getPageTitle() {
        return Texts.page(title);
    }

    final StockSites sites() {
        return sites;
    }

    /** What the address asks for under a name. */
    final Optional<String> asked(String name) {
        return Optional.ofNullable(asked.get(name));
    }

    /** The id the address asks for under a name. */
    final Optional<UUID> askedId(String name) {
        try {
            return asked(name).map(UUID::fromString);
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    /** Goes to another screen about one thing. */
    static void go(String url, String name, String value) {
        UI.getCurrent().navigate(url, QueryParameters.simple(Map.of(name, value)));
    }

    final void head(String text) {
        heading.setText(text);
    }

    /** Shows the parts anew. */
    final void refresh() {
        body.removeAll();
        site.ifPresentOrElse(here -> show(here, body), () -> body.add(empty("stock.no-hospital")));
    }

    /** Shows the parts of the screen for a hospital. */
    abstract void show(Site here, Div body);

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

    final void say(String text, boolean harm) {
        answer.setVisible(true);
        answer.setText(text);
        answer.setClassName("notice");
        answer.setClassName("harm", harm);
    }

    static Section part(String heading, Component... content) {
        var part = new Section(new H2(heading));
        part.add(content);
        part.addClassName("sheet");
        return part;
    }

    static Div empty(String key) {
        var empty = new Div(Texts.text(key));
        empty.addClassName("empty");
        return empty;
    }

    static Button link(String key, Runnable deed) {
        var button = new Button(Texts.text(key), click -> deed.run());
        button.addClassName("link");
        return button;
    }

    private Nav places() {
        var list = new UnorderedList();
        PLACES.forEach((url, key) -> list.add(place(url, Texts.text(key), key.equals(title))));
        site.filter(here -> sites.keeps(here.id()))
                .ifPresent(here ->
                        list.add(place(Urls.STOCK_MOVE, Texts.text("stock.move-in"), title.equals("stock.move-in"))));
        if (sites.mine().size() > 1) {
            sites.mine()
                    .forEach(one -> list.add(place(
                            Urls.STOCK + "?site=" + one.code(),
                            one.name(),
                            site.filter(one::equals).isPresent() && title.equals("stock.shelves"))));
        }
        var nav = new Nav(list);
        nav.addClassNames("child-pages", "no-print");
        nav.setAriaLabel(Texts.text("stock.places"));
        return nav;
    }

    private ListItem place(String url, String text, boolean here) {
        var code = site.map(Site::code).orElse("");
        var link = new Anchor(url.contains("?") || code.isEmpty() ? url : url + "?site=" + code, text);
        if (here) {
            link.getElement().setAttribute("aria-current", "page");
        }
        return new ListItem(link);
    }
}
