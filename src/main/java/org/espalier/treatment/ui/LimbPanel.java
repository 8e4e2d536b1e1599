package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.Locale;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.FactId;
import org.espalier.treatment.LimbStanding;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PhysisStanding;
import org.espalier.treatment.StandingPlan;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentText;

/** One limb: each physis with its state, why, target and plans. */
final class LimbPanel extends Composite<Section> {

    private final Treatment treatment;
    private final Desk desk;
    private final Runnable again;
    private final boolean surgeon;
    private final boolean writes;

    LimbPanel(LimbStanding limb, Treatment treatment, Desk desk, Runnable again) {
        this.treatment = treatment;
        this.desk = desk;
        this.again = again;
        surgeon = desk.isSurgeonAt(treatment);
        writes = desk.mayWriteAt(treatment);
        getContent().addClassNames("sheet", "limb");
        getContent().add(new H2(Choices.limb(limb.side(), Texts.text("treatment.limb", Texts.of(limb.side())))));
        limb.conditions().forEach((condition, since) -> getContent()
                .add(PageParts.paragraph(
                        "soon", Texts.text("treatment.condition", Texts.of(condition), DateText.of(since)))));
        limb.ended().ifPresent(why -> getContent().add(PageParts.paragraph("small", Texts.of(why))));
        getContent().add(PageParts.paragraph("target", TreatmentText.target(limb)));
        if (surgeon) {
            getContent()
                    .add(actions(
                            Choices.link(
                                    Texts.text("treatment.target.of-limb", Texts.of(limb.side())),
                                    () -> new TargetDialog(limb.side(), Optional.empty(), desk, treatment, again)
                                            .open()),
                            Choices.link(
                                    Texts.text("treatment.plan.of-limb", Texts.of(limb.side())),
                                    () -> plan(limb, Optional.empty()).open())));
        }
        treatment.physes().stream()
                .filter(one -> one.physis().side() == limb.side())
                .forEach(one -> getContent().add(physis(limb, one)));
        treatment.waiting().stream()
                .filter(plan -> plan.plan().side() == limb.side()
                        && plan.plan().physis().isEmpty())
                .forEach(plan -> getContent().add(plan(plan)));
    }

    private PlanDialog plan(LimbStanding limb, Optional<PhysisKey> physis) {
        return new PlanDialog(limb.side(), physis, Optional.empty(), desk, treatment, again);
    }

    private Component physis(LimbStanding limb, PhysisStanding standing) {
        var key = standing.physis();
        var state = new Span(Texts.of(standing.state()));
        state.addClassNames("state", "state-" + standing.state().name().toLowerCase(Locale.ROOT));
        var title = new H3(new Span(capital(TreatmentText.withoutSide(key))), state);
        var box = new Div(title);
        box.addClassName("physis");
        box.add(PageParts.paragraph("why", TreatmentText.of(standing.why())));
        box.add(PageParts.paragraph("target", TreatmentText.target(standing)));
        standing.plans().stream()
                .filter(plan -> plan.plan().physis().isPresent())
                .forEach(plan -> box.add(plan(plan)));
        if (surgeon) {
            var name = TreatmentText.of(key);
            box.add(actions(
                    Choices.link(Texts.text("treatment.plan.of", name), () -> plan(limb, Optional.of(key))
                            .open()),
                    Choices.link(
                            Texts.text("treatment.target.of", name),
                            () -> new TargetDialog(key.side(), Optional.of(key), desk, treatment, again).open()),
                    Choices.link(
                            Texts.text("treatment.closed.of", name),
                            () -> new MaturityDialog(key, desk, treatment, again).open())));
        }
        return box;
    }

    private Component plan(StandingPlan standing) {
        var plan = standing.plan();
        var box = new Div(
                new Span(Texts.text(
                        plan.isListed() ? "treatment.plan.listed" : "treatment.plan.planned", TreatmentText.of(plan))),
                PageParts.paragraph("small", TreatmentText.when(plan)));
        box.addClassName("plan");
        if (writes) {
            var change = Choices.link(Texts.text("treatment.plan.change"), () -> new PlanDialog(
                            plan.side(), plan.physis(), Optional.of(standing), desk, treatment, again)
                    .open());
            var ready = Choices.link(
                    Texts.text("treatment.ready.open"), () -> new ReadyDialog(standing, desk, treatment, again).open());
            box.add(new ReadyLines(standing, desk, treatment.site()), actions(change, ready));
        }
        if (surgeon) {
            box.add(Choices.link(Texts.text("treatment.plan.withdraw"), () -> new ReasonDialog(
                            reason -> desk.facts()
                                    .withdraw(
                                            treatment.child(),
                                            standing.id(),
                                            plan,
                                            new FactId(desk.ids().next()),
                                            reason),
                            again)
                    .open()));
        }
        return box;
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Texts.language()) + text.substring(1);
    }

    private static Div actions(Component... links) {
        var actions = new Div(links);
        actions.addClassName("links");
        return actions;
    }
}
