package org.espalier.opinion.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.combobox.MultiSelectComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.StaffId;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.Advice;
import org.espalier.opinion.Colleague;
import org.espalier.opinion.Invitation;
import org.espalier.opinion.Panel;
import org.espalier.opinion.Question;
import org.jspecify.annotations.Nullable;

/** What is asked, what the asker has, and who is asked until when. */
final class AskFields {

    private static final int WEEKS_TO_ANSWER = 2;
    private static final int WEEKS_OPEN = 6;
    private static final int SHORTEST = 10;

    private final TextArea question = new TextArea(Texts.text("opinion.question"));
    private final CheckboxGroup<Advice> wanted = new CheckboxGroup<>(Texts.text("opinion.wanted"));
    private final TextField place = new TextField(Texts.text("opinion.place"));
    private final DateEntryField dueBy;
    private final Checkbox frame = new Checkbox(Texts.text("opinion.has-frame"));
    private final Checkbox mri = new Checkbox(Texts.text("opinion.has-mri"));
    private final IntegerField wait = new IntegerField(Texts.text("opinion.theatre-wait"));
    private final TextField consent = new TextField(Texts.text("opinion.consent"));
    private final MultiSelectComboBox<Colleague> colleagues =
            new MultiSelectComboBox<>(Texts.text("opinion.colleagues"));
    private final ComboBox<Panel> panel = new ComboBox<>(Texts.text("opinion.panel"));
    private final Checkbox everybody = new Checkbox(Texts.text("opinion.everybody"));
    private final DateEntryField until;
    private final LocalDate today;

    AskFields(LocalDate today, List<Colleague> surgeons, List<Panel> panels) {
        this.today = today;
        dueBy = new DateEntryField(Texts.text("opinion.due-by"), () -> today);
        until = new DateEntryField(Texts.text("opinion.until"), () -> today);
        question.setHelperText(Texts.text("opinion.question.help"));
        question.setMaxLength(Question.LENGTH);
        question.setMinRows(4);
        question.setValueChangeMode(ValueChangeMode.LAZY);
        place.setHelperText(Texts.text("opinion.place.help"));
        place.setMaxLength(200);
        consent.setHelperText(Texts.text("opinion.consent.help"));
        consent.setMaxLength(400);
        wanted.setItems(Advice.values());
        wanted.setItemLabelGenerator(Texts::of);
        wait.setMin(0);
        wait.setMax(200);
        colleagues.setItems(surgeons);
        colleagues.setItemLabelGenerator(one -> Texts.text("opinion.colleague", one.name(), one.hospital()));
        panel.setItems(panels);
        panel.setItemLabelGenerator(one -> Texts.text(
                "opinion.panel.of",
                one.name(),
                one.members().stream().map(Colleague::name).collect(Collectors.joining(", "))));
        panel.setClearButtonVisible(true);
        everybody.setHelperText(Texts.text("opinion.everybody.help"));
        until.setValue(today.plusWeeks(WEEKS_OPEN));
        dueBy.setValue(today.plusWeeks(WEEKS_TO_ANSWER));
    }

    Section asked() {
        var fields = grid(place, dueBy, wait);
        return PageParts.part(Texts.text("opinion.step.question"), question, wanted, fields, frame, mri, consent);
    }

    Section invited() {
        return PageParts.part(Texts.text("opinion.step.who"), colleagues, panel, everybody, grid(until));
    }

    private static Div grid(Component... fields) {
        var grid = new Div(fields);
        grid.addClassName("form-fields");
        return grid;
    }

    /** Calls back at every change of a field. */
    void onChange(Runnable changed) {
        Stream.<HasValue<?, ?>>of(
                        question, wanted, place, dueBy, frame, mri, wait, consent, colleagues, panel, everybody, until)
                .forEach(field -> field.addValueChangeListener(change -> changed.run()));
    }

    void show(TypedAsk typed) {
        question.setValue(typed.question());
        wanted.setValue(typed.wanted());
        place.setValue(typed.place());
        frame.setValue(typed.hasFrame());
        mri.setValue(typed.hasMri());
        wait.setValue(typed.weeks());
        consent.setValue(typed.consent());
        everybody.setValue(typed.everybody());
        colleagues.setValue(colleagues
                .getListDataView()
                .getItems()
                .filter(one -> typed.colleagues().contains(one.id().value()))
                .collect(Collectors.toSet()));
        panel.getListDataView()
                .getItems()
                .filter(one -> one.id().equals(typed.panel()))
                .findFirst()
                .ifPresent(panel::setValue);
        if (!typed.dueBy().isEmpty()) {
            dueBy.setValue(LocalDate.parse(typed.dueBy()));
        }
        if (!typed.until().isEmpty()) {
            until.setValue(LocalDate.parse(typed.until()));
        }
    }

    /** What is typed, with the chosen films and facts of before. */
    TypedAsk typed(TypedAsk before) {
        return new TypedAsk(
                before.thread(),
                question.getValue(),
                wanted.getValue(),
                place.getValue(),
                text(dueBy.getValue()),
                frame.getValue(),
                mri.getValue(),
                wait.getValue(),
                consent.getValue(),
                colleagues.getValue().stream().map(one -> one.id().value()).collect(Collectors.toSet()),
                panel.getValue() == null ? null : panel.getValue().id(),
                everybody.getValue(),
                text(until.getValue()),
                before.films(),
                before.covers(),
                before.checked(),
                before.facts());
    }

    private static String text(@Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }

    /** Whether what must be there is; what is missing says so itself. */
    boolean isComplete() {
        mark(question.getValue().strip().length() < SHORTEST, question, "opinion.question.missing");
        mark(consent.getValue().strip().length() < 3, consent, "opinion.consent.missing");
        wanted.setInvalid(wanted.getValue().isEmpty());
        wanted.setErrorMessage(Texts.text("opinion.wanted.missing"));
        return !question.isInvalid()
                && !consent.isInvalid()
                && !wanted.isInvalid()
                && dueBy.getValue() != null
                && until.getValue() != null;
    }

    private static <F extends HasValidation> void mark(boolean wrong, F field, String key) {
        field.setErrorMessage(Texts.text(key));
        field.setInvalid(wrong);
    }

    Question question() {
        return new Question(
                question.getValue(),
                wanted.getValue().stream().sorted().toList(),
                place.getValue(),
                dueBy.getValue() == null ? today : dueBy.getValue(),
                frame.getValue(),
                mri.getValue(),
                wait.getValue(),
                consent.getValue());
    }

    Invitation invitation() {
        UUID chosen = panel.getValue() == null ? null : panel.getValue().id();
        return new Invitation(
                colleagues.getValue().stream()
                        .map(Colleague::id)
                        .map(id -> new StaffId(id.value()))
                        .toList(),
                chosen,
                everybody.getValue(),
                until.getValue() == null ? today : until.getValue());
    }
}
