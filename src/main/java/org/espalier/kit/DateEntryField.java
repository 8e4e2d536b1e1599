package org.espalier.kit;

import com.vaadin.flow.component.AbstractCompositeField;
import com.vaadin.flow.component.Focusable;
import com.vaadin.flow.component.HasLabel;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.ValidationResult;
import com.vaadin.flow.data.binder.Validator;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalDate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A date typed freely. What was understood is said back in words; what can be read in two ways is asked before it is
 * taken. What was typed stays until it is mended.
 */
public class DateEntryField extends AbstractCompositeField<Div, DateEntryField, @Nullable LocalDate>
        implements HasLabel, HasValidation, Focusable<DateEntryField> {

    private final TextField typed = new TextField();
    private final Div echo = new Div();
    private final Supplier<LocalDate> today;

    /**
     * @param label the field's label
     * @param today today at the reader's site
     */
    public DateEntryField(String label, Supplier<LocalDate> today) {
        super(null);
        this.today = today;
        typed.setLabel(label);
        typed.setHelperText(Texts.text("kit.date.example"));
        typed.setAutocomplete(Autocomplete.OFF);
        typed.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        typed.setWidthFull();
        typed.setManualValidation(true);
        typed.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                take(change.getValue());
            }
        });
        echo.addClassName("date-echo");
        echo.getElement().setAttribute("aria-live", "polite");
        getContent().addClassName("date-entry");
        getContent().add(typed, echo);
    }

    /** What was typed, whether it could be read or not. */
    public String typed() {
        return typed.getValue();
    }

    /** Puts back what was typed, as if it had just been. */
    public void type(String text) {
        typed.setValue(text);
        take(text);
    }

    /** Refuses what was typed and could not be taken; an empty field passes. */
    public Validator<@Nullable LocalDate> readable() {
        return (value, context) -> value == null && !typed.getValue().isBlank()
                ? ValidationResult.error(Texts.text(problem()))
                : ValidationResult.ok();
    }

    /** Hears of every change by the reader, read or not. */
    public void addTypingListener(Runnable listener) {
        typed.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                listener.run();
            }
        });
        addValueChangeListener(change -> {
            if (change.isFromClient()) {
                listener.run();
            }
        });
    }

    @Override
    public String getLabel() {
        return typed.getLabel();
    }

    @Override
    public void setLabel(String label) {
        typed.setLabel(label);
    }

    @Override
    public void setErrorMessage(@Nullable String message) {
        typed.setErrorMessage(message);
    }

    @Override
    public String getErrorMessage() {
        return typed.getErrorMessage();
    }

    @Override
    public void setInvalid(boolean invalid) {
        typed.setInvalid(invalid);
    }

    @Override
    public boolean isInvalid() {
        return typed.isInvalid();
    }

    @Override
    public void setRequiredIndicatorVisible(boolean required) {
        typed.setRequiredIndicatorVisible(required);
    }

    @Override
    public boolean isRequiredIndicatorVisible() {
        return typed.isRequiredIndicatorVisible();
    }

    @Override
    public void focus() {
        typed.focus();
    }

    @Override
    protected void setPresentationValue(@Nullable LocalDate value) {
        typed.setValue(value == null ? "" : DateText.typed(value));
        echo.removeAll();
    }

    private String problem() {
        return DateEntry.of(typed.getValue(), Texts.language(), today.get()) instanceof DateEntry.Ambiguous
                ? "kit.date.choose"
                : "kit.date.unreadable";
    }

    private void take(String text) {
        echo.removeAll();
        setInvalid(false);
        if (text.isBlank()) {
            setModelValue(null, true);
            return;
        }
        switch (DateEntry.of(text, Texts.language(), today.get())) {
            case DateEntry.Read(var read) -> understand(read);
            case DateEntry.Ambiguous(var dayFirst, var monthFirst) -> ask(dayFirst, monthFirst);
            case DateEntry.Unreadable() -> {
                setModelValue(null, true);
                echo.setText(Texts.text("kit.date.unreadable"));
            }
        }
    }

    private void understand(LocalDate read) {
        setModelValue(read, true);
        echo.setText(DateText.inWords(read));
    }

    private void ask(LocalDate dayFirst, LocalDate monthFirst) {
        setModelValue(null, true);
        echo.add(new Div(Texts.text("kit.date.ambiguous")), choice(dayFirst), choice(monthFirst));
    }

    private Button choice(LocalDate one) {
        return new Button(DateText.inWords(one), click -> type(DateText.typed(one)));
    }
}
