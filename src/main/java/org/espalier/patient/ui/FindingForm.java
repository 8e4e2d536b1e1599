package org.espalier.patient.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.Binder;
import com.vaadin.flow.data.binder.ValidationException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.ErrorSummary;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.Fact;
import org.espalier.patient.FactId;
import org.espalier.patient.Finding;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;
import org.jspecify.annotations.Nullable;

/** The fields of one kind of finding, to write one down or to correct one. */
abstract class FindingForm<F extends Finding> extends Composite<Div> {

    /**
     * What is to be written down.
     *
     * @param besides what the same form found besides, to be written down together with it
     */
    record Entry<F>(
            FactId id,
            F finding,
            Map<FactId, Finding> besides,
            @Nullable FactId correcting,
            String reason) {}

    private static final int REASON_LENGTH = 200;

    private final TypedFields fields = new TypedFields(this::keep);
    private final ErrorSummary errors = new ErrorSummary();
    private final Div answer = new Div();
    private final Div grid = new Div();
    private final DateEntryField on;
    private final TextField reason = new TextField(Texts.text("patient.reason"));
    private final Button save = new Button(Texts.text("patient.finding.save"));
    private final Button stop = new Button(Texts.text("patient.correcting.stop"));
    private final Binder<F> binder;
    private final Ids ids;
    private final FormDraft<TypedFinding> draft;
    private FactId id;
    private @Nullable FactId correcting;
    private boolean begun;

    FindingForm(Class<F> type, LocalDate birth, LocalDate today, Ids ids, FormDraft<TypedFinding> draft) {
        this.ids = ids;
        this.draft = draft;
        id = new FactId(ids.next());
        binder = new Binder<>(type);
        on = new DateEntryField(Texts.text("patient.on"), () -> today);
        bindDay(birth, today);
        reason.setMaxLength(REASON_LENGTH);
        reason.setHelperText(Texts.text("patient.reason.help"));
        reason.setVisible(false);
        stop.setVisible(false);
        stop.addClickListener(click -> clear());
        fields.add("on", on::typed, on::type);
        remember("reason", reason);
        on.addTypingListener(this::keep);
        save.addThemeVariants(ButtonVariant.PRIMARY);
        grid.addClassName("form-fields");
        grid.add(on);
        var actions = new Div(save, stop);
        actions.addClassName("actions");
        getContent().add(errors, answer, grid, reason, actions);
    }

    /** Fills the fields of this kind with a finding. */
    abstract void fill(F finding);

    /** What is wrong with the finding as a whole; empty when nothing is. */
    abstract Optional<String> problem();

    /** The finding that stands in the fields, which are all right by themselves. */
    F write() {
        try {
            return binder.writeRecord();
        } catch (ValidationException e) {
            throw new IllegalStateException("validated before", e);
        }
    }

    /** What stands in the fields besides the finding. */
    Map<FactId, Finding> besides() {
        return Map.of();
    }

    /** Sets what an emptied form begins with, and what a correction has no fields for. */
    void begin(boolean isCorrection) {}

    final Binder<F> binder() {
        return binder;
    }

    final void add(Component field) {
        grid.add(field);
    }

    /** Says what the date is the date of. */
    final void labelDay(String key) {
        on.setLabel(Texts.text(key));
    }

    /** Fills in the day without counting it as typed. */
    final void setDay(LocalDate day) {
        on.setValue(day);
    }

    /** The day in the field, which is all right by itself. */
    final LocalDate day() {
        return on.getOptionalValue().orElseThrow();
    }

    final FactId nextId() {
        return new FactId(ids.next());
    }

    /** Whether something was typed that is not written down yet. */
    final boolean isBegun() {
        return begun;
    }

    /** Keeps what stands in the field as it is typed. */
    final void remember(String name, HasValue<?, String> field) {
        fields.add(name, field, field::getValue, field::setValue);
    }

    /** Keeps what is chosen in the field. */
    final <E extends Enum<E>> void remember(String name, Select<E> field, Class<E> type) {
        fields.add(name, field, type);
    }

    /** What the draft keeps, for what is more than a text or a choice. */
    final TypedFields fields() {
        return fields;
    }

    /** Does with each good entry what the screen does; the screen clears the form when it is kept. */
    final void onSave(Consumer<Entry<F>> listener) {
        save.addClickListener(click -> read().ifPresent(finding -> listener.accept(new Entry<>(
                id, finding, besides(), correcting, reason.getValue().strip()))));
    }

    /** Puts back what was typed before. */
    final void goOn() {
        begin(false);
        draft.typed().ifPresent(typed -> {
            begun = true;
            id = typed.id() == null ? id : new FactId(typed.id());
            setCorrecting(typed.correcting() == null ? null : new FactId(typed.correcting()));
            begin(correcting != null);
            fields.setTexts(typed.fields());
            say(Texts.text("patient.draft.found"), "");
        });
    }

    /** Begins to correct a fact. */
    final void correct(Fact<F> fact) {
        if (fact.finding() != null) {
            clear();
            setCorrecting(fact.id());
            begin(true);
            on.type(DateText.typed(fact.on()));
            fill(fact.finding());
            say(Texts.text("patient.correcting"), "soon");
            reason.focus();
        }
    }

    /** Empties the form and forgets what was typed. */
    final void clear() {
        id = new FactId(ids.next());
        setCorrecting(null);
        fields.setTexts(Map.of());
        binder.getFields().filter(HasValidation.class::isInstance).forEach(field -> ((HasValidation) field)
                .setInvalid(false));
        errors.clear();
        answer.removeAll();
        begin(false);
        draft.discard();
        begun = false;
    }

    final void say(String text, String level) {
        var notice = PageParts.paragraph("notice", text);
        notice.getElement().setAttribute("role", "status");
        if (!level.isEmpty()) {
            notice.addClassName(level);
        }
        answer.removeAll();
        answer.add(notice);
    }

    private void bindDay(LocalDate birth, LocalDate today) {
        binder.forField(on)
                .withValidator(on.readable())
                .asRequired(Texts.text("patient.on.missing"))
                .withValidator(day -> !day.isAfter(today), Texts.text("patient.on.to-come"))
                .withValidator(day -> !day.isBefore(birth), Texts.text("patient.on.before-birth"))
                .bind("on");
    }

    private Optional<F> read() {
        var status = binder.validate();
        errors.show(status);
        reason.setInvalid(correcting != null && reason.getValue().isBlank());
        reason.setErrorMessage(Texts.text("patient.reason.missing"));
        if (!status.isOk() || reason.isInvalid()) {
            return Optional.empty();
        }
        var problem = problem();
        problem.ifPresent(text -> say(text, "harm"));
        return problem.isPresent() ? Optional.empty() : Optional.of(write());
    }

    private void setCorrecting(@Nullable FactId fact) {
        correcting = fact;
        boolean corrects = fact != null;
        reason.setVisible(corrects);
        stop.setVisible(corrects);
        save.setText(Texts.text(corrects ? "patient.correcting.save" : "patient.finding.save"));
    }

    /** Keeps what stands in the form now. */
    final void keep() {
        begun = true;
        var typed = new TypedFinding(id.value(), fields.texts(), correcting == null ? null : correcting.value());
        if (!draft.keep(typed)) {
            say(Texts.text("patient.draft.elsewhere"), "soon");
        }
    }
}
