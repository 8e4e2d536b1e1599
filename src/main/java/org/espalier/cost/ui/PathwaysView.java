package org.espalier.cost.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.cost.Cell;
import org.espalier.cost.CostReportService;
import org.espalier.cost.DiagnosisGroup;
import org.espalier.cost.Money;
import org.espalier.cost.Pathway;
import org.espalier.cost.PathwayFigures;
import org.espalier.cost.PathwayLine;
import org.espalier.cost.PathwayReport;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/**
 * What does a pathway cost here, how does it spread, and how does it compare with the year before and with elsewhere?
 */
@Route(Urls.COSTS_PATHWAYS)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/cost.css")
class PathwaysView extends CostPage {

    private static final int YEARS = 10;

    private final CostReportService reports;

    PathwaysView(CostReportService reports, CostSites sites) {
        super(sites, "cost.pathways");
        this.reports = reports;
    }

    @Override
    protected void show(Site here, Div body) {
        int thisYear = sites().today(here).getYear();
        int year = asked("year")
                .filter(text -> text.matches("\\d{4}"))
                .map(Integer::valueOf)
                .orElse(thisYear);
        var all = sites().mine().stream()
                .flatMap(site -> IntStream.of(year, year - 1).mapToObj(one -> reports.pathways(site.id(), one)))
                .toList();
        body.add(
                years(here, year, thisYear),
                PageParts.part(
                        Texts.text("cost.pathways-of", String.valueOf(year), String.valueOf(year - 1)), lines(all)),
                PageParts.said(Texts.text("cost.pathways.what")),
                PageParts.said(Texts.text("cost.suppressed")));
        all.stream().filter(report -> !report.lines().isEmpty()).forEach(report -> body.add(mix(report)));
    }

    private Component years(Site here, int year, int thisYear) {
        var pick = new Select<Integer>();
        pick.setLabel(Texts.text("cost.year"));
        pick.setItems(IntStream.rangeClosed(0, YEARS)
                .mapToObj(back -> thisYear - back)
                .toList());
        pick.setItemLabelGenerator(String::valueOf);
        pick.setValue(year);
        pick.addValueChangeListener(change -> UI.getCurrent()
                .navigate(
                        Urls.COSTS_PATHWAYS,
                        QueryParameters.simple(
                                Map.of("site", here.code(), "year", String.valueOf(change.getValue())))));
        var files = new Div(
                ChargesView.file(Urls.costPathways("csv", here.code(), year), "cost.csv"),
                ChargesView.file(Urls.costPathways("xlsx", here.code(), year), "cost.xlsx"));
        files.addClassNames("actions", "no-print");
        return new Div(pick, files);
    }

    private Component lines(List<PathwayReport> all) {
        return new LineTable<PathwayLine>("cost.pathways.none")
                .text("cost.pathway", one -> Texts.of(one.pathway()))
                .text("cost.hospital", one -> name(one.site()))
                .text("cost.year", one -> String.valueOf(one.year()))
                .number("cost.limbs", one -> CostText.of(one.limbs()))
                .number(
                        "cost.median",
                        one -> figure(
                                one, figures -> CostText.about(figures.spread().median())))
                .number("cost.middle-half", one -> figure(one, PathwaysView::half))
                .number(
                        "cost.operations-each",
                        one -> figure(one, figures -> Texts.text("cost.one-decimal", figures.meanOperations())))
                .number("cost.on-target", one -> figure(one, PathwaysView::reached))
                .number("cost.per-limb", one -> figure(one, figures -> target(figures, each -> each.perLimb())))
                .number("cost.per-degree", one -> figure(one, figures -> target(figures, each -> each.perDegree())))
                .ordered("cost.ordered.pathway")
                .with(all.stream()
                        .flatMap(report -> report.lines().stream())
                        .sorted(java.util.Comparator.comparing(PathwayLine::pathway))
                        .toList());
    }

    private String name(SiteId site) {
        return sites().mine().stream()
                .filter(one -> one.id().equals(site))
                .map(Site::name)
                .findFirst()
                .orElse("");
    }

    private static String figure(PathwayLine line, Function<PathwayFigures, String> what) {
        return line.figures().map(what).orElseGet(() -> Texts.text("cost.hidden"));
    }

    private static String half(PathwayFigures figures) {
        return Texts.text(
                "cost.between",
                CostText.about(figures.spread().lower()),
                CostText.about(figures.spread().upper()));
    }

    private static String reached(PathwayFigures figures) {
        return figures.target()
                .map(one -> Texts.text("cost.of", one.reached(), one.known()))
                .orElseGet(() -> Texts.text("cost.hidden"));
    }

    private static String target(
            PathwayFigures figures, Function<PathwayFigures.Reached, java.util.Optional<Money>> what) {
        return figures.target().flatMap(what).map(CostText::about).orElseGet(() -> Texts.text("cost.not-told"));
    }

    private Component mix(PathwayReport report) {
        var rows = new ArrayList<Integer>();
        IntStream.range(0, report.mix().size())
                .filter(row -> report.mix().get(row).stream().anyMatch(cell -> !cell.equals(new Cell.Told(0))))
                .forEach(rows::add);
        var table = new LineTable<Integer>("cost.pathways.none").text("cost.diagnosis", PathwaysView::group);
        for (var pathway : Pathway.values()) {
            table.under(
                    Texts.of(pathway), row -> CostText.of(report.mix().get(row).get(pathway.ordinal())));
        }
        table.number("cost.all", row -> CostText.of(report.mix().get(row).getLast()));
        return PageParts.part(
                Texts.text("cost.mix", name(report.site()), String.valueOf(report.year())),
                table.with(rows),
                PageParts.said(Texts.text("cost.left-out", CostText.of(report.leftOut()))));
    }

    private static String group(int row) {
        var groups = DiagnosisGroup.values();
        return row < groups.length ? Texts.of(groups[row]) : Texts.text("cost.all");
    }
}
