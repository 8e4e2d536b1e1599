package org.espalier.patient.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.Binder;
import com.vaadin.flow.data.binder.ValidationException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.ErrorSummary;
import org.espalier.kit.Texts;
import org.espalier.patient.Fact;
import org.espalier.patient.FactId;
import org.espalier.patient.Finding;
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

    private record Field(Supplier<String> get, Consumer<String> set) {}

    private static final String REASON = "reason";
    private static final String ON = "on";
    private static final int REASON_LENGTH = 200;

    private final Map<String, Field> fields = new LinkedHashMap<>();
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
    private boolean filling;

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
        fields.put(ON, new Field(on::typed, on::type));
        remember(REASON, reason);
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
    F write() throws ValidationException {
        return binder.writeRecord();
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

    final void setDay(LocalDate day) {
        on.type(DateText.of(day));
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
        remember(name, field, field::getValue, field::setValue);
    }

    /** Keeps what stands in the field, by its text. */
    final void remember(String name, HasValue<?, ?> field, Supplier<String> get, Consumer<String> set) {
        fields.put(name, new Field(get, set));
        keepOnChange(field);
    }

    /** Keeps a text that has no field. */
    final void remember(String name, Supplier<String> get, Consumer<String> set) {
        fields.put(name, new Field(get, set));
    }

    /** Keeps what is chosen in the field; a choice of an earlier version that is no more reads as none. */
    final <E extends Enum<E>> void remember(String name, Select<E> field, Class<E> type) {
        remember(
                name,
                field,
                () -> field.isEmpty() ? "" : field.getValue().name(),
                text -> field.setValue(Arrays.stream(type.getEnumConstants())
                        .filter(choice -> choice.name().equals(text))
                        .findFirst()
                        .orElse(null)));
    }

    /** Does with each good entry what the screen does; the screen clears the form when it is kept. */
    final void onSave(Consumer<Entry<F>> listener) {
        save.addClickListener(click -> read().ifPresent(finding -> listener.accept(new Entry<>(
                id, finding, besides(), correcting, reason.getValue().strip()))));
    }

    /** Sets what the form begins with: nobody typed it, so nothing is kept of it. */
    private void fillIn(boolean isCorrection) {
        filling = true;
        begin(isCorrection);
        filling = false;
    }

    /** Puts back what was typed before. */
    final void goOn() {
        fillIn(false);
        draft.typed().ifPresent(typed -> {
            begun = true;
            id = typed.id() == null ? id : new FactId(typed.id());
            setCorrecting(typed.correcting() == null ? null : new FactId(typed.correcting()));
            fillIn(correcting != null);
            fields.forEach((name, field) ->
                    field.set().accept(Objects.requireNonNullElse(typed.fields().get(name), "")));
            say(Texts.text("patient.draft.found"), "");
        });
    }

    /** Begins to correct a fact. */
    final void correct(Fact<F> fact) {
        if (fact.finding() != null) {
            clear();
            setCorrecting(fact.id());
            fillIn(true);
            setDay(fact.on());
            fill(fact.finding());
            say(Texts.text("patient.correcting"), "soon");
            reason.focus();
        }
    }

    /** Empties the form and forgets what was typed. */
    final void clear() {
        draft.discard();
        id = new FactId(ids.next());
        setCorrecting(null);
        fields.values().forEach(field -> field.set().accept(""));
        binder.getFields().filter(HasValidation.class::isInstance).forEach(field -> ((HasValidation) field)
                .setInvalid(false));
        errors.clear();
        answer.removeAll();
        begun = false;
        fillIn(false);
    }

    final void say(String text, String level) {
        var notice = new Paragraph(text);
        notice.addClassName("notice");
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
        try {
            return problem.isPresent() ? Optional.empty() : Optional.of(write());
        } catch (ValidationException e) {
            return Optional.empty();
        }
    }

    private void setCorrecting(@Nullable FactId fact) {
        correcting = fact;
        reason.setVisible(fact != null);
        stop.setVisible(fact != null);
        save.setText(Texts.text(fact == null ? "patient.finding.save" : "patient.correcting.save"));
    }

    private void keepOnChange(HasValue<?, ?> field) {
        field.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                keep();
            }
        });
    }

    /** Keeps what stands in the form now. */
    final void keep() {
        if (filling) {
            return;
        }
        begun = true;
        var typed = new LinkedHashMap<String, String>();
        fields.forEach((name, field) -> typed.put(name, field.get().get()));
        if (!draft.keep(new TypedFinding(id.value(), typed, correcting == null ? null : correcting.value()))) {
            say(Texts.text("patient.draft.elsewhere"), "soon");
        }
    }
}
