package org.espalier.patient.ui;

import com.vaadin.flow.component.customfield.CustomField;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.ValidationResult;
import com.vaadin.flow.data.binder.Validator;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Age;
import org.jspecify.annotations.Nullable;

/** An age typed as years and months. */
final class AgeFields extends CustomField<Age> {

    private static final int LAST_MONTH = 11;

    private final TextField years = TypedNumber.field("patient.years", "patient.y");
    private final TextField months = TypedNumber.field("patient.months", "patient.m");
    private final int oldest;

    AgeFields(String label, int oldest) {
        super(null, true);
        this.oldest = oldest;
        setLabel(Texts.text(label));
        years.addValueChangeListener(change -> updateValue());
        months.addValueChangeListener(change -> updateValue());
        var both = new Div(years, months);
        both.addClassName("age-fields");
        add(both);
    }

    TextField years() {
        return years;
    }

    TextField months() {
        return months;
    }

    /** Refuses what was typed and is no age; empty fields pass. */
    Validator<@Nullable Age> readable() {
        return (value, context) -> value == null && !isBlank()
                ? ValidationResult.error(Texts.text("patient.age.range", oldest))
                : ValidationResult.ok();
    }

    @Override
    public void focus() {
        years.focus();
    }

    @Override
    protected @Nullable Age generateModelValue() {
        var wholeYears = parse(years, oldest);
        var wholeMonths = parse(months, LAST_MONTH);
        if (isBlank() || wholeYears.isEmpty() || wholeMonths.isEmpty()) {
            return null;
        }
        return Age.ofMonths(wholeYears.get() * 12 + wholeMonths.get());
    }

    @Override
    protected void setPresentationValue(@Nullable Age age) {
        years.setValue(age == null ? "" : Integer.toString(age.years()));
        months.setValue(age == null ? "" : Integer.toString(age.months()));
    }

    private boolean isBlank() {
        return years.getValue().isBlank() && months.getValue().isBlank();
    }

    private static Optional<Integer> parse(TextField field, int most) {
        var text = field.getValue().strip();
        if (text.isEmpty()) {
            return Optional.of(0);
        }
        return Optional.of(text)
                .filter(typed -> typed.matches("\\d{1,2}"))
                .map(Integer::valueOf)
                .filter(value -> value <= most);
    }
}
