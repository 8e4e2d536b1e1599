package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.treatment.Act;
import org.espalier.treatment.MeasuredMinutes;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentText;

/** Everything that was done, the latest first; what was corrected stays, struck through, with the reason. */
final class ProcedureList extends Composite<Section> {

    private final Treatment treatment;
    private final Desk desk;
    private final Runnable again;

    ProcedureList(Treatment treatment, Desk desk, Runnable again) {
        this.treatment = treatment;
        this.desk = desk;
        this.again = again;
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("treatment.procedures")));
        if (treatment.procedures().isEmpty()) {
            getContent().add(PageParts.paragraph("empty", Texts.text("treatment.procedures.none")));
            return;
        }
        var standing = new HashSet<>(treatment.standing());
        var list = new OrderedList();
        list.addClassName("procedures");
        treatment.procedures().stream()
                .sorted(Comparator.comparing(Procedure::on)
                        .thenComparing(Procedure::at)
                        .reversed())
                .forEach(one -> list.add(item(one, standing.contains(one))));
        getContent().add(list);
    }

    private ListItem item(Procedure procedure, boolean stands) {
        var day = new Span(DateText.of(procedure.on()));
        day.addClassName("day");
        var item = new ListItem(day);
        procedure
                .data()
                .ifPresentOrElse(
                        data -> fill(item, data, stands),
                        () -> item.add(new Div(new Span(Texts.text("treatment.withdrawn")))));
        item.add(PageParts.paragraph("small", by(procedure)));
        if (stands && desk.mayWriteAt(treatment)) {
            item.add(actions(procedure));
        }
        return item;
    }

    private static void fill(ListItem item, ProcedureData data, boolean stands) {
        var acts = new Div();
        data.acts().forEach(act -> acts.add(new Div(Choices.limb(act.side(), TreatmentText.of(act)), detail(act))));
        if (!stands) {
            acts.addClassName("superseded");
        }
        item.add(acts);
        item.add(PageParts.paragraph(
                "small",
                Texts.text(
                        data.elsewhere() ? "treatment.next.line-elsewhere" : "treatment.next.line",
                        Optional.ofNullable(data.surgeon()).orElseGet(() -> Texts.text("treatment.not-recorded")),
                        DateText.of(data.next().date()),
                        data.next().why())));
        if (data.measured().isRecorded()) {
            item.add(PageParts.paragraph("small", minutes(data.measured())));
        }
        Optional.ofNullable(data.note()).ifPresent(note -> item.add(PageParts.paragraph("note", note)));
    }

    private static String minutes(MeasuredMinutes measured) {
        return Texts.text(
                "treatment.minutes.line",
                measured.theatre() == null ? Choices.notRecorded() : minutes(measured.theatre()),
                measured.anaesthesia() == null ? Choices.notRecorded() : minutes(measured.anaesthesia()));
    }

    private static String minutes(int minutes) {
        return Texts.text("treatment.minutes", minutes);
    }

    private static Component detail(Act act) {
        var answers = act.answers().entrySet().stream()
                .map(answer -> Texts.text(
                        "treatment.answered",
                        Texts.of(answer.getKey()),
                        answer.getKey().isAnsweredInWords()
                                ? answer.getValue()
                                : Texts.text("treatment.Answer." + answer.getValue())))
                .collect(Collectors.joining("; "));
        var detail = new Span(Texts.text("treatment.implants.line", act.implants(), act.count(), answers));
        detail.addClassName("small");
        return detail;
    }

    private static String by(Procedure procedure) {
        var by = Optional.ofNullable(procedure.by()).orElseGet(() -> Texts.text("treatment.by.house"));
        return procedure.reason() == null
                ? Texts.text("treatment.by", by)
                : Texts.text("treatment.by.reason", by, procedure.reason());
    }

    private Component actions(Procedure procedure) {
        var correct = new Anchor(
                Urls.recordProcedure(treatment.child().value()) + "?correct="
                        + procedure.id().value(),
                Texts.text("treatment.correct"));
        var withdraw = Choices.link(Texts.text("treatment.withdraw"), () -> new ReasonDialog(
                        reason -> desk.treatments()
                                .withdraw(
                                        treatment.child(),
                                        procedure.id(),
                                        new ProcedureId(desk.ids().next()),
                                        reason),
                        again)
                .open());
        var actions = new Div(correct, withdraw);
        actions.addClassName("links");
        return actions;
    }
}
