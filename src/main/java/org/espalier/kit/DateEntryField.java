package org.espalier.kit;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.customfield.CustomField;
import com.vaadin.flow.component.html.Div;
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
public class DateEntryField extends CustomField<LocalDate> {

    private final TextField typed = new TextField();
    private final Div echo = new Div();
    private final Supplier<LocalDate> today;
    private @Nullable LocalDate day;

    /**
     * @param label the field's label
     * @param today today at the reader's site
     */
    public DateEntryField(String label, Supplier<LocalDate> today) {
        super(null, true);
        this.today = today;
        setLabel(label);
        setHelperText(Texts.text("kit.date.example"));
        typed.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        typed.setWidthFull();
        typed.setAriaLabel(label);
        typed.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                take(change.getValue());
            }
        });
        echo.addClassName("date-echo");
        echo.getElement().setAttribute("aria-live", "polite");
        add(typed, echo);
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

    /** Hears of every change of what was typed, read or not. */
    public void addTypingListener(Runnable listener) {
        typed.addValueChangeListener(change -> listener.run());
        addValueChangeListener(change -> listener.run());
    }

    @Override
    protected @Nullable LocalDate generateModelValue() {
        return day;
    }

    @Override
    protected void setPresentationValue(@Nullable LocalDate value) {
        day = value;
        typed.setValue(value == null ? "" : DateText.of(value));
        echo.removeAll();
    }

    private String problem() {
        return DateEntry.of(typed.getValue(), Texts.language(), today.get()) instanceof DateEntry.Ambiguous
                ? "kit.date.choose"
                : "kit.date.unreadable";
    }

    private void take(String text) {
        echo.removeAll();
        day = null;
        if (!text.isBlank()) {
            switch (DateEntry.of(text, Texts.language(), today.get())) {
                case DateEntry.Read(var read) -> understand(read);
                case DateEntry.Ambiguous(var dayFirst, var monthFirst) -> ask(dayFirst, monthFirst);
                case DateEntry.Unreadable() -> echo.setText(Texts.text("kit.date.unreadable"));
            }
        }
        updateValue();
    }

    private void understand(LocalDate read) {
        day = read;
        echo.setText(DateText.inWords(read));
    }

    private void ask(LocalDate dayFirst, LocalDate monthFirst) {
        echo.add(new Div(Texts.text("kit.date.ambiguous")), choice(dayFirst), choice(monthFirst));
    }

    private Button choice(LocalDate one) {
        var button = new Button(DateText.inWords(one), click -> {
            understand(one);
            updateValue();
        });
        button.addThemeVariants(ButtonVariant.LUMO_SMALL);
        return button;
    }
}
