package org.espalier.patient.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.Binder;
import com.vaadin.flow.data.binder.ValidationException;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.ErrorSummary;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildData;

/** The fields about who a child is. */
final class ChildForm extends Composite<Div> {

    private final ErrorSummary errors = new ErrorSummary();
    private final TextField familyName = field("patient.family-name", ChildData.NAME_LENGTH);
    private final TextField givenName = field("patient.given-name", ChildData.NAME_LENGTH);
    private final DateEntryField birthDate;
    private final RadioButtonGroup<SexChoice> sex = new RadioButtonGroup<>(Texts.text("patient.sex"));
    private final TextField localNumber = field("patient.local-number", ChildData.NUMBER_LENGTH);
    private final Binder<ChildData> binder = new Binder<>(ChildData.class);

    /** @param today today at the hospital that has care */
    ChildForm(Supplier<LocalDate> today) {
        birthDate = new DateEntryField(Texts.text("patient.birth-date"), today);
        sex.setItems(SexChoice.values());
        sex.setItemLabelGenerator(Texts::of);
        givenName.setHelperText(Texts.text("patient.given-name.help"));
        localNumber.setHelperText(Texts.text("patient.local-number.help"));
        bind(today);
        var fields = new Div(familyName, givenName, birthDate, sex, localNumber);
        fields.addClassName("form-fields");
        getContent().add(errors, fields);
    }

    /** What was typed, when all of it is good; else shows what is to be mended. */
    Optional<ChildData> read() {
        var status = binder.validate();
        errors.show(status);
        try {
            return status.isOk() ? Optional.of(binder.writeRecord()) : Optional.empty();
        } catch (ValidationException e) {
            return Optional.empty();
        }
    }

    void show(ChildData data) {
        binder.readRecord(data);
    }

    void show(TypedChild typed) {
        familyName.setValue(typed.familyName());
        givenName.setValue(typed.givenName());
        birthDate.type(typed.birthDate());
        sex.setValue(typed.sex() == null ? null : SexChoice.valueOf(typed.sex()));
        localNumber.setValue(typed.localNumber());
    }

    /** What stands in the fields, with what the screen knows besides. */
    TypedChild typed(TypedChild besides) {
        return new TypedChild(
                besides.site(),
                familyName.getValue(),
                givenName.getValue(),
                birthDate.typed(),
                sex.isEmpty() ? null : sex.getValue().name(),
                localNumber.getValue(),
                besides.version(),
                besides.base());
    }

    /** Hears of every change by the reader. */
    void addTypingListener(Runnable listener) {
        Stream.of(familyName, givenName, localNumber).forEach(field -> {
            field.addValueChangeListener(change -> {
                if (change.isFromClient()) {
                    listener.run();
                }
            });
        });
        sex.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                listener.run();
            }
        });
        birthDate.addTypingListener(listener);
    }

    void refuseNumber(String message) {
        localNumber.setErrorMessage(message);
        localNumber.setInvalid(true);
        localNumber.focus();
    }

    void focus() {
        familyName.focus();
    }

    private void bind(Supplier<LocalDate> today) {
        binder.forField(familyName)
                .asRequired(Texts.text("patient.family-name.missing"))
                .withValidator(value -> !value.isBlank(), Texts.text("patient.family-name.missing"))
                .bind("familyName");
        binder.forField(givenName).withNullRepresentation("").bind("givenName");
        binder.forField(birthDate)
                .withValidator(birthDate.readable())
                .asRequired(Texts.text("patient.birth-date.missing"))
                .withValidator(day -> !day.isAfter(today.get()), Texts.text("patient.birth-date.to-come"))
                .bind("birthDate");
        binder.forField(sex)
                .asRequired(Texts.text("patient.sex.missing"))
                .withConverter(SexChoice::sex, SexChoice::of)
                .bind("sex");
        binder.forField(localNumber).withNullRepresentation("").bind("localNumber");
    }

    private static TextField field(String label, int longest) {
        var field = new TextField(Texts.text(label));
        field.setMaxLength(longest);
        field.setValueChangeMode(ValueChangeMode.LAZY);
        field.setAutocomplete(Autocomplete.OFF);
        return field;
    }
}
