package org.espalier.cost.ui;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Route;
import org.espalier.access.Site;
import org.espalier.cost.CostReportService;
import org.espalier.cost.CostReportService.Told;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** What did the care of each limb cost, from the first plan to the end, repeats in it? */
@Route(Urls.COSTS_EPISODES)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/cost.css")
class EpisodesView extends CostPage {

    private final CostReportService reports;

    EpisodesView(CostReportService reports, CostSites sites) {
        super(sites, "cost.episodes");
        this.reports = reports;
    }

    @Override
    protected void show(Site here, Div body) {
        body.add(
                PageParts.part(
                        Texts.text("cost.episodes-of", here.name()),
                        new LineTable<Told>("cost.episodes.none")
                                .show(
                                        "cost.account",
                                        one -> new Anchor(
                                                Urls.costAccount(
                                                        here.code(),
                                                        one.pseudonym().text()),
                                                one.pseudonym().text()))
                                .text(
                                        "cost.limb",
                                        one -> Texts.of(one.cost().episode().side()))
                                .text(
                                        "cost.pathway",
                                        one -> Texts.of(one.cost().episode().pathway()))
                                .text(
                                        "cost.time",
                                        one -> EpisodePart.time(one.cost().episode()))
                                .number(
                                        "cost.operations",
                                        one -> EpisodePart.operations(one.cost().episode()))
                                .number(
                                        "cost.total",
                                        one -> CostText.of(one.cost().total()))
                                .with(reports.episodes(here.id()))),
                PageParts.said(Texts.text("cost.episodes.what")),
                PageParts.said(Texts.text("cost.pseudonyms")));
    }
}
