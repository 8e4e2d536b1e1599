package org.espalier.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.Dated;
import org.espalier.patient.LegSign;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.science.alignment.Quantity;

/** Distance, place of the axis, pain, and from when until when a plate is in question. */
record KnockKnees(Ahead ahead, LimbMeasures measures) {

    Sheet.Part part() {
        var facts = new Sheet.Gathered();
        last(ahead.examination().gapsOfAnkles())
                .ifPresent(gap -> facts.with(
                        "plan.knock.ankles",
                        Texts.text("plan.knock.gap", gap.value().millimetres(), DateText.of(gap.on()))));
        last(ahead.examination().gapsOfKnees())
                .ifPresent(gap -> facts.with(
                        "plan.knock.knees",
                        Texts.text("plan.knock.gap", gap.value().millimetres(), DateText.of(gap.on()))));
        measures.latest(Quantity.WBL)
                .ifPresent(film -> facts.with(
                        "plan.knock.axis",
                        Texts.text("plan.knock.axis.percent", film.value(), DateText.of(film.on()))));
        last(ahead.examination().answers(measures.side(), LegSign.PAIN))
                .ifPresent(pain -> facts.with(
                        "plan.knock.pain",
                        Texts.text(
                                "plan.knock.on",
                                Texts.text("plan.answer." + pain.value().name()),
                                DateText.of(pain.on()))));
        windows().forEach(window -> facts.with("plan.growth.window", window));
        facts.with("plan.knock.fracture", Texts.text("plan.knock.fracture.none"));
        return facts.under("plan.knock.heading");
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
