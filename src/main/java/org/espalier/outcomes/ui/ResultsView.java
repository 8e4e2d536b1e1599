package org.espalier.outcomes.ui;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.outcomes.Measure;
import org.espalier.outcomes.OutcomeService;
import org.espalier.outcomes.Results;
import org.espalier.outcomes.Span;

/** What came of our plates, and how does it compare? */
@Route(Urls.OUTCOMES)
@Menu(title = "outcomes.menu", order = 65)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/outcomes.css")
class ResultsView extends OutcomePage {

    ResultsView(OutcomeService outcomes, SiteService sites) {
        super(outcomes, sites, "outcomes.results");
    }

    @Override
    protected void show(Site here, Div body) {
        var span = span(here);
        var measure = measure();
        var results = outcomes().results(here.id(), span);
        body.add(years(Urls.OUTCOMES, here, Map.of("measure", measure.name())));
        if (results.plates().isEmpty()) {
            body.add(PageParts.empty("outcomes.results.none"));
        } else {
            few(results, body);
            var inShort = ResultParts.inShort(results);
            inShort.add(behind(here, span));
            body.add(inShort, ResultParts.curve(results), ResultParts.letGo(results), ResultParts.after(results));
        }
        body.add(ResultParts.looks(results.looks()));
        if (!results.plates().isEmpty()) {
            body.add(ResultParts.complications(results));
        }
        var comparison = outcomes().compared(measure, span);
        body.add(new ComparisonPart(comparison, sites().all(), here, span).shown());
        body.add(PageParts.caution("outcomes.caution"), anew(here));
    }

    private static void few(Results results, Div body) {
        if (results.isFew()) {
            body.add(PageParts.caution("outcomes.few"));
        }
    }

    private Measure measure() {
        return asked("measure")
                .flatMap(name -> Arrays.stream(Measure.values())
                        .filter(one -> one.name().equals(name))
                        .findFirst())
                .orElse(Measure.STRAIGHT);
    }

    private static Anchor behind(Site here, Span span) {
        var url = Urls.at(Urls.OUTCOMES_PLATES, Optional.of(here.code()));
        return new Anchor(url + "&from=" + span.from() + "&to=" + span.to(), Texts.text("outcomes.behind"));
    }
}
