package org.espalier.outcomes.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.QueryParameters;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.PageParts;
import org.espalier.kit.PageParts.Place;
import org.espalier.kit.PlacesPage;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.kit.paper.Drawings;
import org.espalier.kit.paper.Markup;
import org.espalier.outcomes.OutcomeService;
import org.espalier.outcomes.Span;

/** A screen of outcomes of one hospital. */
abstract class OutcomePage extends PlacesPage<Site> {

    private static final Map<String, String> PLACES = new LinkedHashMap<>();

    static {
        PLACES.put(Urls.OUTCOMES, "outcomes.results");
        PLACES.put(Urls.OUTCOMES_FORECASTS, "outcomes.forecasts");
        PLACES.put(Urls.OUTCOMES_PLATES, "outcomes.plates");
    }

    private static final int YEARS = 15;

    private final OutcomeService outcomes;
    private final SiteService sites;

    OutcomePage(OutcomeService outcomes, SiteService sites, String title) {
        super(title, "outcomes");
        this.outcomes = outcomes;
        this.sites = sites;
    }

    final OutcomeService outcomes() {
        return outcomes;
    }

    final SiteService sites() {
        return sites;
    }

    /** The years that the address asks for; the last ones where it asks for none, or for what is no span. */
    final Span span(Site here) {
        var usual = Span.upTo(sites.today(here.id()));
        int from = year("from").orElse(usual.from());
        int to = year("to").orElse(usual.to());
        return from <= to ? new Span(from, to) : new Span(to, from);
    }

    private Optional<Integer> year(String name) {
        return asked(name).filter(text -> text.matches("(19|20)\\d\\d")).map(Integer::valueOf);
    }

    /** The choice of years, kept in the address with what else is asked there. */
    final Component years(String url, Site here, Map<String, String> besides) {
        var span = span(here);
        int thisYear = sites.today(here.id()).getYear();
        var from = year("outcomes.from", thisYear, span.from());
        var to = year("outcomes.to", thisYear, span.to());
        List.of(from, to)
                .forEach(pick -> pick.addValueChangeListener(change -> {
                    var asks = new LinkedHashMap<>(besides);
                    asks.put("site", here.code());
                    asks.put("from", String.valueOf(from.getValue()));
                    asks.put("to", String.valueOf(to.getValue()));
                    UI.getCurrent().navigate(url, QueryParameters.simple(asks));
                }));
        var picks = new Div(from, to);
        picks.addClassNames("picks", "no-print");
        return picks;
    }

    private static Select<Integer> year(String label, int thisYear, int chosen) {
        var pick = new Select<Integer>();
        pick.setLabel(Texts.text(label));
        pick.setItems(IntStream.concat(IntStream.rangeClosed(thisYear - YEARS, thisYear), IntStream.of(chosen))
                .distinct()
                .map(year -> -year)
                .sorted()
                .map(year -> -year)
                .boxed()
                .toList());
        pick.setItemLabelGenerator(String::valueOf);
        pick.setValue(chosen);
        return pick;
    }

    /** When this was told, and how to have it told anew. */
    final Component anew(Site here) {
        var button = new Button(Texts.text("outcomes.anew"), click -> {
            outcomes.renew(here.id());
            say(Texts.text("outcomes.anew.asked"), false);
        });
        var part = new Div(PageParts.said(Texts.text("outcomes.anew.what")), button);
        part.addClassNames("anew", "no-print");
        return part;
    }

    /** @param words what it shows, for whoever does not see it; its numbers stand in a table below */
    static Component drawing(Consumer<Markup> drawing, String words) {
        var picture = new Image(Drawings.address(drawing), words);
        picture.addClassName("outcome-drawing");
        return picture;
    }

    @Override
    protected final List<Site> hospitals() {
        return outcomes.mine();
    }

    @Override
    protected final String code(Site hospital) {
        return hospital.code();
    }

    @Override
    protected final String name(Site hospital) {
        return hospital.name();
    }

    @Override
    protected final String elsewhere(String place) {
        return place;
    }

    @Override
    protected final Component nowhere() {
        return PageParts.empty("outcomes.no-hospital");
    }

    @Override
    protected final Component places(Optional<Site> site, String title) {
        var own = PLACES.entrySet().stream()
                .map(place -> new Place(
                        Urls.at(place.getKey(), site.map(Site::code)),
                        Texts.text(place.getValue()),
                        place.getValue().equals(title)));
        return PageParts.places(Texts.text("outcomes.places"), own.toList());
    }
}
