package org.espalier.cost.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.access.Site;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** A screen of costs: its places, what was answered last, and its parts, shown anew after each deed. */
abstract class CostPage extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private static final Map<String, String> PLACES = new LinkedHashMap<>();

    static {
        PLACES.put(Urls.COSTS, "cost.charges");
        PLACES.put(Urls.COSTS_EPISODES, "cost.episodes");
        PLACES.put(Urls.COSTS_PATHWAYS, "cost.pathways");
        PLACES.put(Urls.COSTS_BUDGET, "cost.budget");
        PLACES.put(Urls.COSTS_TARIFFS, "cost.tariffs");
    }

    private final CostSites sites;
    private final String title;
    private final Div answer = new Div();
    private final Div body = new Div();
    private Optional<Site> site = Optional.empty();
    private Map<String, String> asked = Map.of();

    CostPage(CostSites sites, String title) {
        this.sites = sites;
        this.title = title;
        answer.getElement().setAttribute("role", "status");
        answer.setVisible(false);
        body.addClassName("parts");
        getContent().addClassNames("screen", "costs");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var parameters = event.getLocation().getQueryParameters();
        asked = parameters.getParameters().entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, one -> one.getValue().getFirst()));
        site = sites.of(parameters.getSingleParameter("site"));
        getContent().removeAll();
        getContent().add(new H1(Texts.text(title)), places(), answer, body);
        refresh();
    }

    @Override
    public String getPageTitle() {
        return Texts.page(title);
    }

    final CostSites sites() {
        return sites;
    }

    /** What the address asks for under a name. */
    final Optional<String> asked(String name) {
        return Optional.ofNullable(asked.get(name));
    }

    /** Shows the parts anew. */
    final void refresh() {
        body.removeAll();
        site.ifPresentOrElse(here -> show(here, body), () -> body.add(empty("cost.no-hospital")));
    }

    /** Shows the parts of the screen for a hospital. */
    abstract void show(Site here, Div body);

    /** Does something and says what came of it. */
    final void act(Runnable deed, String done) {
        deed.run();
        say(Texts.text(done));
        refresh();
    }

    final void say(String text) {
        answer.setVisible(true);
        answer.setText(text);
        answer.setClassName("notice");
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

    static Paragraph said(String text) {
        var said = new Paragraph(text);
        said.addClassName("said");
        return said;
    }

    private Nav places() {
        var list = new UnorderedList();
        PLACES.forEach((url, key) -> list.add(place(url, Texts.text(key), key.equals(title))));
        if (sites.mine().size() > 1) {
            sites.mine()
                    .forEach(one -> list.add(place(
                            Urls.COSTS + "?site=" + one.code(),
                            one.name(),
                            site.filter(one::equals).isPresent() && title.equals("cost.charges"))));
        }
        var nav = new Nav(list);
        nav.addClassNames("child-pages", "no-print");
        nav.setAriaLabel(Texts.text("cost.places"));
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
