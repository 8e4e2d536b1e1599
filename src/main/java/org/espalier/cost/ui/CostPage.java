package org.espalier.cost.ui;

import com.vaadin.flow.component.Component;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.access.Site;
import org.espalier.kit.PageParts;
import org.espalier.kit.PageParts.Place;
import org.espalier.kit.PlacesPage;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** A screen of costs. */
abstract class CostPage extends PlacesPage<Site> {

    private static final Map<String, String> PLACES = new LinkedHashMap<>();

    static {
        PLACES.put(Urls.COSTS, "cost.charges");
        PLACES.put(Urls.COSTS_EPISODES, "cost.episodes");
        PLACES.put(Urls.COSTS_PATHWAYS, "cost.pathways");
        PLACES.put(Urls.COSTS_BUDGET, "cost.budget");
        PLACES.put(Urls.COSTS_TARIFFS, "cost.tariffs");
    }

    private final CostSites sites;

    CostPage(CostSites sites, String title) {
        super(title, "costs");
        this.sites = sites;
    }

    final CostSites sites() {
        return sites;
    }

    /** Does something and says what came of it. */
    final void act(Runnable deed, String done) {
        deed.run();
        say(Texts.text(done));
        refresh();
    }

    final void say(String text) {
        say(text, false);
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

    /** An account is one hospital's alone. */
    @Override
    protected final String elsewhere(String place) {
        return place.equals(Urls.COSTS_ACCOUNT) ? Urls.COSTS_EPISODES : place;
    }

    @Override
    protected final Component nowhere() {
        return PageParts.empty("cost.no-hospital");
    }

    @Override
    protected final Component places(Optional<Site> site, String title) {
        var own = PLACES.entrySet().stream()
                .map(place -> new Place(
                        Urls.at(place.getKey(), site.map(Site::code)),
                        Texts.text(place.getValue()),
                        place.getValue().equals(title)));
        return PageParts.places(Texts.text("cost.places"), own.toList());
    }
}
