package org.espalier.outcomes.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.QueryParameters;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.cost.DiagnosisGroup;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.outcomes.AgeBand;
import org.espalier.outcomes.Comparison;
import org.espalier.outcomes.GrowthBand;
import org.espalier.outcomes.HospitalCounts;
import org.espalier.outcomes.Measure;
import org.espalier.outcomes.Span;
import org.espalier.outcomes.internal.FunnelDrawing;
import org.espalier.science.statistics.Funnel;

/** Hospitals side by side: no order but that of their names, no colour, and what makes their children differ. */
final class ComparisonPart {

    private final Comparison comparison;
    private final Map<SiteId, Site> sites;
    private final Site here;
    private final Span span;

    ComparisonPart(Comparison comparison, List<Site> sites, Site here, Span span) {
        this.comparison = comparison;
        this.sites = sites.stream().collect(Collectors.toMap(Site::id, Function.identity()));
        this.here = here;
        this.span = span;
    }

    Component shown() {
        var part = PageParts.part(Texts.text("outcomes.compared"), PageParts.caution("outcomes.compared.mix"), pick());
        comparison.funnel().ifPresentOrElse(funnel -> add(part, funnel), () -> {
            part.add(PageParts.said(Texts.text("outcomes.funnel.none")));
            part.add(counts(Optional.empty()));
        });
        part.add(
                PageParts.said(Texts.text("outcomes.compared.how")),
                PageParts.said(Texts.text("outcomes.suppressed")),
                mix());
        return part;
    }

    private void add(Section part, Funnel funnel) {
        var codes = sites.values().stream().collect(Collectors.toMap(Site::id, Site::code));
        part.add(
                OutcomePage.drawing(
                        page -> FunnelDrawing.draw(comparison, codes, page),
                        Texts.text("outcomes.funnel.alt", Texts.of(comparison.measure()))),
                counts(Optional.of(funnel)));
        comparison.overDispersion().ifPresent(over -> {
            part.add(PageParts.said(
                    Texts.text("outcomes.over", over.phi(), comparison.units().size())));
            if (over.isUncertain()) {
                part.add(PageParts.caution("outcomes.over.few"));
            }
        });
    }

    private Component pick() {
        var pick = new Select<Measure>();
        pick.setLabel(Texts.text("outcomes.measure"));
        pick.setItems(Measure.values());
        pick.setItemLabelGenerator(Texts::of);
        pick.setValue(comparison.measure());
        pick.addValueChangeListener(change -> UI.getCurrent()
                .navigate(
                        Urls.OUTCOMES,
                        QueryParameters.simple(Map.of(
                                "site", here.code(),
                                "from", String.valueOf(span.from()),
                                "to", String.valueOf(span.to()),
                                "measure", change.getValue().name()))));
        pick.addClassNames("measure", "no-print");
        return pick;
    }

    private Component counts(Optional<Funnel> funnel) {
        var table = named();
        for (var measure : Measure.values()) {
            table.under(
                    Texts.of(measure),
                    hospital -> OutcomeText.of(
                            Objects.requireNonNull(hospital.came().get(measure))));
        }
        table.number("outcomes.open", hospital -> OutcomeText.of(hospital.open()))
                .number("outcomes.children", hospital -> OutcomeText.of(hospital.all()))
                .under(
                        Texts.text("outcomes.share-of-ended", Texts.of(comparison.measure())),
                        hospital -> hospital.ended(comparison.measure())
                                .map(share -> OutcomeText.of(Optional.of(share)))
                                .orElseGet(() -> Texts.text("outcomes.hidden")));
        funnel.ifPresent(one -> {
            table.number("outcomes.limits-95", hospital -> limits(one, hospital, Funnel.WARNING));
            table.number("outcomes.limits-998", hospital -> limits(one, hospital, Funnel.ALARM));
        });
        return table.ordered("outcomes.ordered.names").with(comparison.hospitals());
    }

    private String limits(Funnel funnel, HospitalCounts hospital, double inside) {
        return hospital.ended(comparison.measure())
                .map(share -> OutcomeText.percent(funnel.limits(share.of(), inside)))
                .orElseGet(() -> Texts.text("outcomes.hidden"));
    }

    /** Of each way to group children a table: lines for hospitals, however many there are, columns for groups. */
    private Component mix() {
        return PageParts.part(
                Texts.text("outcomes.mix"),
                PageParts.said(Texts.text("outcomes.mix.how")),
                new H3(Texts.text("outcomes.mix.cause")),
                grouped(DiagnosisGroup.values(), HospitalCounts.Mix::diagnoses),
                new H3(Texts.text("outcomes.mix.age")),
                grouped(AgeBand.values(), HospitalCounts.Mix::ages),
                new H3(Texts.text("outcomes.mix.growth")),
                grouped(GrowthBand.values(), HospitalCounts.Mix::growth));
    }

    private <C extends Enum<C>> Component grouped(C[] groups, Function<HospitalCounts.Mix, Map<C, Integer>> counts) {
        var table = named();
        for (var group : groups) {
            table.under(Texts.of(group), hospital -> hospital.mix()
                    .map(mix -> String.valueOf(counts.apply(mix).getOrDefault(group, 0)))
                    .orElseGet(() -> Texts.text("outcomes.hidden")));
        }
        return table.ordered("outcomes.ordered.names").with(comparison.hospitals());
    }

    private LineTable<HospitalCounts> named() {
        return new LineTable<HospitalCounts>("outcomes.compared.none")
                .text("outcomes.hospital", hospital -> name(hospital.site()));
    }

    private String name(SiteId id) {
        return Optional.ofNullable(sites.get(id))
                .map(site -> Texts.text("outcomes.hospital.named", site.code(), site.name()))
                .orElse("");
    }
}
