package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.platform.Ids;
import org.espalier.treatment.Act;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.Stop;
import org.espalier.treatment.Treatment;

/** What was done on one day: one act or several, the day, and when the child comes again. Kept at every change. */
final class ProcedureForm extends Composite<Div> {

    /** Takes what is complete. */
    interface Save {

        void take(ProcedureId id, ProcedureData data, String reason);
    }

    private final ActForms acts;
    private final DateEntryField on;
    private final Checkbox elsewhere = new Checkbox(Texts.text("treatment.elsewhere"));
    private final TextField surgeon = Choices.text("treatment.surgeon", ProcedureData.NAME_LENGTH);
    private final TextArea note = Choices.area("treatment.note", ProcedureData.NOTE_LENGTH);
    private final MinuteFields minutes = new MinuteFields(this::changed);
    private final NextVisitFields next;
    private final TextField reason = Choices.text("treatment.reason", 400);
    private final Div summary = new Div();
    private final Problems problems = new Problems();
    private final Div notice = new Div();
    private final StopPanel stops;
    private final Treatment treatment;
    private final ProcedureDraft draft;
    private final boolean correcting;
    private final Button save;
    private ProcedureId id;
    private boolean filling = true;
    private Runnable retry = () -> {};

    ProcedureForm(
            Treatment treatment,
            Optional<Procedure> corrected,
            LocalDate today,
            Ids ids,
            PieceSource source,
            ProcedureDraft draft,
            StopPanel stops) {
        this.treatment = treatment;
        this.draft = draft;
        this.stops = stops;
        correcting = corrected.isPresent();
        id = new ProcedureId(ids.next());
        on = new DateEntryField(Texts.text("treatment.on"), () -> today);
        acts = new ActForms(correcting ? treatment.tethers() : treatment.tethersIn(), source, ids, this::changed);
        next = new NextVisitFields(today, on::getValue, this::changed);
        reason.setVisible(correcting);
        save = new Button(Texts.text(correcting ? "treatment.record.save-correction" : "treatment.record.save"));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        summary.addClassName("act-summary");
        summary.getElement().setAttribute("aria-live", "polite");
        getContent()
                .add(
                        notice,
                        problems,
                        quickPicks(),
                        PageParts.part(Texts.text("treatment.what"), acts),
                        when(),
                        PageParts.part(Texts.text("treatment.next"), next),
                        further(),
                        summary,
                        stops,
                        actions());
        on.type(DateText.typed(today));
        corrected.flatMap(Procedure::data).ifPresent(this::fill);
        draft.typed().ifPresent(this::goOn);
        listen();
        filling = false;
        summarise();
    }

    void onSave(Save taker) {
        save.addClickListener(click -> tryToSave(taker));
        retry = () -> tryToSave(taker);
    }

    /** Says what was refused; everything typed stays. */
    void showRefusal(String why) {
        problems.say(why);
    }

    void showStops(List<Stop> why) {
        stops.show(why, stop -> place(acts.act(stop.place())), retry);
    }

    private static StopPanel.Place place(Act act) {
        return new StopPanel.Place(
                act.physis().orElseThrow(), Optional.ofNullable(act.plateSide()).orElseThrow());
    }

    private void tryToSave(Save taker) {
        var missing = missing();
        problems.show(missing);
        stops.clear();
        if (missing.isEmpty()) {
            taker.take(id, data(), reason.getValue());
        }
    }

    private ProcedureData data() {
        return new ProcedureData(
                on.getValue(),
                elsewhere.getValue(),
                surgeon.getValue(),
                note.getValue(),
                minutes.minutes(),
                acts.acts(),
                next.look());
    }

    private Map<Component, String> missing() {
        var missing = new LinkedHashMap<Component, String>();
        acts.demand(missing);
        Problems.demand(missing, on, on.getValue() != null, "treatment.on.missing");
        Problems.demand(missing, elsewhere, !elsewhere.getValue() || !acts.isFromShelf(), "treatment.elsewhere.shelf");
        next.demand(missing, on.getValue());
        minutes.demand(missing);
        Problems.demand(missing, reason, !correcting || !reason.getValue().isBlank(), "treatment.reason.missing");
        return missing;
    }

    private Component quickPicks() {
        var picks = new QuickPicks(treatment, acts::take);
        picks.setVisible(!correcting && !picks.isEmpty());
        return picks;
    }

    private Section when() {
        var fields = new Div(on, surgeon);
        fields.addClassName("form-fields");
        surgeon.setPlaceholder(Texts.text("treatment.not-recorded"));
        return PageParts.part(Texts.text("treatment.when"), fields, elsewhere);
    }

    private Component further() {
        note.setPlaceholder(Texts.text("treatment.not-recorded"));
        return new Details(Texts.text("treatment.minutes.and-note"), minutes, note);
    }

    private Component actions() {
        var discard = new Button(Texts.text("treatment.discard"), click -> {
            draft.discard();
            getUI().ifPresent(ui -> ui.getPage().reload());
        });
        var actions = new Div(reason, save, discard);
        actions.addClassName("actions");
        return actions;
    }

    private void fill(ProcedureData data) {
        on.type(DateText.typed(data.on()));
        elsewhere.setValue(data.elsewhere());
        surgeon.setValue(Optional.ofNullable(data.surgeon()).orElse(""));
        note.setValue(Optional.ofNullable(data.note()).orElse(""));
        minutes.fill(data.measured().theatre(), data.measured().anaesthesia());
        next.type(DateText.typed(data.next().date()), data.next().why());
        acts.fill(data.acts().stream().map(QuickPicks::typed).toList());
    }

    private void goOn(TypedProcedure typed) {
        id = new ProcedureId(typed.id());
        on.type(typed.on());
        elsewhere.setValue(typed.elsewhere());
        surgeon.setValue(typed.surgeon());
        note.setValue(typed.note());
        minutes.fill(typed.theatreMinutes(), typed.anaesthesiaMinutes());
        next.type(typed.nextOn(), typed.nextWhy());
        reason.setValue(typed.reason());
        acts.fill(typed.acts());
        say("treatment.draft.found");
    }

    private void listen() {
        on.addTypingListener(this::changed);
        List.of(surgeon, note, reason)
                .forEach(field -> field.addValueChangeListener(change -> {
                    if (change.isFromClient()) {
                        changed();
                    }
                }));
        elsewhere.addValueChangeListener(change -> changed());
    }

    private void changed() {
        if (filling) {
            return;
        }
        summarise();
        boolean kept = draft.keep(new TypedProcedure(
                id.value(),
                on.typed(),
                elsewhere.getValue(),
                surgeon.getValue(),
                note.getValue(),
                next.day(),
                next.reason(),
                reason.getValue(),
                minutes.theatre(),
                minutes.anaesthesia(),
                acts.typed()));
        if (!kept) {
            say("treatment.draft.elsewhere");
        }
    }

    private void summarise() {
        summary.removeAll();
        acts.summaries().forEach(line -> summary.add(new Div(line)));
    }

    private void say(String text) {
        notice.removeAll();
        notice.add(PageParts.paragraph("notice", Texts.text(text)));
    }
}
