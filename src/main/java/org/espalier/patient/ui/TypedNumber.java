package org.espalier.patient.ui;

import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.Result;
import java.math.BigDecimal;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.jspecify.annotations.Nullable;

/** A number typed freely, with a decimal point or comma, and the field for it. */
final class TypedNumber {

    private TypedNumber() {}

    /** A field with the unit at its end, and the keys for numbers on a phone. */
    static TextField field(String label, String unit) {
        var field = new TextField(Texts.text(label));
        field.setSuffixComponent(new Span(Texts.text(unit)));
        field.getElement().setAttribute("inputmode", "decimal");
        field.setMaxLength(8);
        return field;
    }

    /** The number typed; empty for an empty field. */
    static Result<Optional<Double>> parse(@Nullable String typed, int digits, double least, double most, String error) {
        var text = typed == null ? "" : typed.strip().replace(',', '.');
        if (text.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        if (!text.matches("\\d{1,3}(\\.\\d{1," + Math.max(digits, 1) + "})?") || digits == 0 && text.contains(".")) {
            return Result.error(Texts.text(error));
        }
        double value = new BigDecimal(text).doubleValue();
        return value < least || value > most ? Result.error(Texts.text(error)) : Result.ok(Optional.of(value));
    }
}
