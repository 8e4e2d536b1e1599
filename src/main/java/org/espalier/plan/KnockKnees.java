package org.espalier.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.Dated;
import org.espalier.patient.LegSign;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.FilmAngle;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.reading.NumberText;
import org.espalier.science.alignment.AxisZone;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Length;

/** Distance, zone of the axis, pain, and from when until when a plate is in question. */
record KnockKnees(Ahead ahead, LimbMeasures measures) {

    Sheet.Part part() {
        var facts = new Sheet.Gathered();
        facts.with("plan.knock.ankles", gap(ahead.examination().gapsOfAnkles()));
        facts.with("plan.knock.knees", gap(ahead.examination().gapsOfKnees()));
        var axis = measures.latest(Quantity.WBL);
        facts.with("plan.knock.axis", axis.map(KnockKnees::axis).orElseGet(() -> Texts.text("plan.knock.axis.unread")));
        axis.ifPresent(film -> facts.with("plan.knock.zone", zone(film.value())));
        facts.with(
                "plan.knock.pain",
                last(ahead.examination().answers(measures.side(), LegSign.PAIN))
                        .map(pain -> Texts.text(
                                "plan.knock.on",
                                Texts.text("plan.answer." + pain.value().name()),
                                DateText.of(pain.on())))
                        .orElseGet(() -> Texts.text("plan.knock.unasked")));
        var windows = windows().toList();
        windows.forEach(window -> facts.with("plan.knock.plate", window));
        if (windows.isEmpty()) {
            facts.with("plan.knock.plate", Texts.text("plan.knock.plate.none"));
        }
        return facts.under("plan.knock.heading");
    }

    private static String gap(List<Dated<Length>> series) {
        return last(series)
                .map(gap -> Texts.text("plan.knock.gap", gap.value().millimetres(), DateText.of(gap.on())))
                .orElseGet(() -> Texts.text("plan.knock.unmeasured"));
    }

    private static String axis(FilmAngle film) {
        return Texts.text("plan.knock.on", NumberText.of(Quantity.WBL, film.value()), DateText.of(film.on()));
    }

    private static String zone(double percent) {
        int zone = AxisZone.of(percent).number();
        return Texts.text(
                zone < 0 ? "plan.knock.zone.medial" : "plan.knock.zone.lateral", Math.abs(zone), AxisZone.SOURCE);
    }

    private Stream<String> windows() {
        return ahead.limb(measures.side()).stream()
                .flatMap(limb -> Stream.of(limb.femur(), limb.tibia()))
                .flatMap(physis -> ahead
                        .prognosis()
                        .physis(physis.physis())
                        .flatMap(PhysisPrognosis::window)
                        .map(window -> Texts.text(
                                "plan.at", PlanText.site(physis.site()), PlanText.window(window, ahead.today())))
                        .stream());
    }

    private static <T> Optional<Dated<T>> last(List<Dated<T>> series) {
        return series.isEmpty() ? Optional.empty() : Optional.of(series.getLast());
    }
}
