package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.treatment.Plan;
import org.espalier.treatment.TreatmentText;

/** What was planned, to be read from across the room: side, physis, side of the bone, implants. */
final class PlannedLarge extends Composite<Div> {

    PlannedLarge(List<Plan> plans) {
        getContent().addClassName("planned-large");
        plans.forEach(plan -> getContent().add(line(plan)));
    }

    private static Component line(Plan plan) {
        var side = Choices.limb(plan.side(), Texts.of(plan.side()).toUpperCase(Locale.ROOT));
        side.addClassName("big-side");
        var where = new Span(
                plan.physis().map(TreatmentText::withoutSide).orElseGet(() -> Texts.text("treatment.whole-limb")));
        where.addClassName("big");
        var line = new Div(side, where);
        if (plan.plateSide() != null) {
            var bone = new Span(Texts.of(plan.plateSide()).toUpperCase(Locale.ROOT));
            bone.addClassName("big-bone-side");
            line.add(bone);
        }
        line.add(new Span(Texts.of(plan.kind())));
        line.add(PageParts.paragraph(
                "small",
                Texts.text(
                        "treatment.planned.line",
                        Optional.ofNullable(plan.deformity()).map(Texts::of).orElseGet(Choices::notRecorded),
                        Optional.ofNullable(plan.implants()).orElseGet(Choices::notRecorded))));
        line.addClassName("planned");
        return line;
    }
}
