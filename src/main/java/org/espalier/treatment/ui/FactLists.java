package org.espalier.treatment.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.FactId;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.Complication;
import org.espalier.treatment.FactLog;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFact;
import org.espalier.treatment.Written;

/** Complications, and where care ended or began again. */
final class FactLists extends Composite<Div> {

    private final Treatment treatment;
    private final Desk desk;
    private final Runnable again;

    FactLists(Treatment treatment, Desk desk, Runnable again) {
        this.treatment = treatment;
        this.desk = desk;
        this.again = again;
        getContent().addClassName("limbs");
        getContent()
                .add(
                        section(
                                "treatment.complications",
                                "treatment.complications.none",
                                treatment.complications(),
                                "treatment.complication.new",
                                () -> new ComplicationDialog(desk, treatment, again).open()),
                        section(
                                "treatment.care",
                                "treatment.care.none",
                                treatment.careSteps(),
                                "treatment.care.new",
                                () -> new CareDialog(desk, treatment, again).open()));
    }

    private <F extends TreatmentFact> Section section(
            String heading, String nothing, FactLog<F> log, String add, Runnable ask) {
        var section = PageParts.part(Texts.text(heading));
        var standing = log.standing();
        if (standing.isEmpty()) {
            section.add(PageParts.paragraph("empty", Texts.text(nothing)));
        } else {
            var list = new UnorderedList();
            standing.reversed().forEach(written -> list.add(item(written)));
            section.add(list);
        }
        if (desk.mayWriteAt(treatment)) {
            section.add(Choices.link(Texts.text(add), ask));
        }
        return section;
    }

    private <F extends TreatmentFact> ListItem item(Written<F> written) {
        var item = new ListItem();
        var fact = written.fact();
        if (fact != null) {
            item.add(new Span(text(fact) + " "));
            if (desk.mayWriteAt(treatment)) {
                item.add(Choices.link(Texts.text("treatment.withdraw"), () -> new ReasonDialog(
                                reason -> desk.facts()
                                        .withdraw(
                                                treatment.child(),
                                                written.id(),
                                                fact,
                                                new FactId(desk.ids().next()),
                                                reason),
                                again)
                        .open()));
            }
        }
        return item;
    }

    private static String text(TreatmentFact fact) {
        return switch (fact) {
            case Complication one ->
                Texts.text(
                        "treatment.complication.line",
                        DateText.of(one.on()),
                        Optional.ofNullable(one.side()).map(Texts::of).orElse(""),
                        Texts.of(one.kind()),
                        Texts.of(one.grade()),
                        Optional.ofNullable(one.note()).orElse(""));
            case CareStep step ->
                Texts.text(
                        "treatment.care.line",
                        DateText.of(step.on()),
                        Optional.ofNullable(step.side())
                                .map(Texts::of)
                                .orElseGet(() -> Texts.text("treatment.care.both")),
                        Texts.of(step.step()),
                        Optional.ofNullable(step.whyEnded()).map(Texts::of).orElse(""),
                        Optional.ofNullable(step.note()).orElse(""));
            default -> throw new IllegalArgumentException("not listed here: " + fact);
        };
    }
}
