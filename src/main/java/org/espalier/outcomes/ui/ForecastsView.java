package org.espalier.outcomes.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.outcomes.Honesty;
import org.espalier.outcomes.OutcomeService;
import org.espalier.outcomes.internal.ChartDrawing;
import org.espalier.outcomes.internal.PlacesDrawing;
import org.espalier.science.forecast.ForecastScore;

/** Were our forecasts honest? */
@Route(Urls.OUTCOMES_FORECASTS)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/outcomes.css")
class ForecastsView extends OutcomePage {

    ForecastsView(OutcomeService outcomes, SiteService sites) {
        super(outcomes, sites, "outcomes.forecasts");
    }

    @Override
    protected void show(Site here, Div body) {
        var honesty = outcomes().honesty(here.id());
        body.add(PageParts.said(Texts.text("outcomes.forecasts.question")));
        if (honesty.judged().isEmpty()) {
            body.add(PageParts.empty("outcomes.forecasts.none"));
        } else {
            body.add(PageParts.said(
                    Texts.text("outcomes.judged", honesty.judged().size(), honesty.beforehand())));
            few(honesty.isFew(), body);
            body.add(angles(honesty), places(honesty.places()));
        }
        if (honesty.chances().isEmpty()) {
            body.add(PageParts.empty("outcomes.chances.none"));
        } else {
            body.add(chances(honesty), chart(honesty.chart()));
        }
        body.add(PageParts.caution("outcomes.caution"), anew(here));
    }

    private static void few(boolean few, Div body) {
        if (few) {
            body.add(PageParts.caution("outcomes.few"));
        }
    }

    private static Component angles(Honesty honesty) {
        var bias = honesty.bias()
                .map(one -> Texts.text(
                        "outcomes.bias.told",
                        one.meanDifference(),
                        one.meanInterval().low(),
                        one.meanInterval().high()))
                .orElseGet(() -> Texts.text("outcomes.of-one"));
        var ranked = honesty.ranked()
                .map(one -> Texts.text("outcomes.ranked.told", one.forecast(), one.line(), one.limbs()))
                .orElseGet(() -> Texts.text("outcomes.ranked.none"));
        return Figure.part(
                "outcomes.angles",
                new Figure("in-90", OutcomeText.exact(honesty.inNineTenths())),
                new Figure("in-50", OutcomeText.exact(honesty.inHalf())),
                new Figure("bias", bias),
                new Figure("ranked", ranked));
    }

    private static Component places(List<Integer> places) {
        return PageParts.part(
                Texts.text("outcomes.fell"),
                drawing(page -> PlacesDrawing.draw(places, page), Texts.text("outcomes.fell.alt")),
                new LineTable<Integer>("outcomes.forecasts.none")
                        .text("outcomes.tenth", tenth -> Texts.text("outcomes.tenth.of", tenth + 1))
                        .number("outcomes.films", tenth -> String.valueOf(places.get(tenth)))
                        .with(IntStream.range(0, places.size()).boxed().toList()),
                PageParts.said(Texts.text("outcomes.fell.how")));
    }

    private static Component chances(Honesty honesty) {
        var z = honesty.spiegelhalter();
        var fits = z.isPresent()
                ? Texts.text("outcomes.fits.told", z.getAsDouble(), ForecastScore.twoSided(z.getAsDouble()))
                : Texts.text("outcomes.fits.none");
        var brier = Optional.of(honesty.brier())
                .filter(one -> one.isPresent())
                .map(one -> Texts.text("outcomes.brier.told", one.getAsDouble()))
                .orElseGet(() -> Texts.text("outcomes.of-none"));
        return Figure.part(
                "outcomes.nevers",
                new Figure(
                        "never",
                        Texts.text(
                                "outcomes.never.told",
                                honesty.nevers(),
                                honesty.chances().size(),
                                honesty.expectedNevers())),
                new Figure("brier", brier),
                new Figure("fits", fits),
                new Figure("unsettled", String.valueOf(honesty.unsettled())));
    }

    private static Component chart(List<Honesty.ChartPoint> chart) {
        return PageParts.part(
                Texts.text("outcomes.chart"),
                drawing(page -> ChartDrawing.draw(chart, page), Texts.text("outcomes.chart.alt")),
                new LineTable<Honesty.ChartPoint>("outcomes.chances.none")
                        .text(
                                "outcomes.settled",
                                one -> DateText.of(one.chance().on()))
                        .number(
                                "outcomes.foretold",
                                one -> OutcomeText.percent(one.chance().foretold()))
                        .text(
                                "outcomes.came",
                                one -> Texts.text(
                                        one.chance().never() ? "outcomes.came.never" : "outcomes.came.reached"))
                        .number(
                                "outcomes.score",
                                one -> Texts.text("outcomes.number", one.point().score()))
                        .text(
                                "outcomes.signal",
                                one -> Texts.text(one.point().signals() ? "outcomes.signals" : "outcomes.no-signal"))
                        .ordered("outcomes.ordered.settled")
                        .with(chart),
                PageParts.said(Texts.text("outcomes.chart.how")));
    }
}
