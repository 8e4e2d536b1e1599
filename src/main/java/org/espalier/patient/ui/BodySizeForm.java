package org.espalier.patient.ui;

import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.Result;
import com.vaadin.flow.data.converter.Converter;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.patient.BodySize;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Weight;
import org.jspecify.annotations.Nullable;

/** Height and weight. */
final class BodySizeForm extends FindingForm<BodySize> {

    private static final int MILLIMETRES = 10;

    private final TextField height = TypedNumber.field("patient.height", "patient.cm");
    private final TextField weight = TypedNumber.field("patient.weight", "patient.kg");

    BodySizeForm(LocalDate birth, LocalDate today, Ids ids, FormDraft<TypedFinding> draft) {
        super(BodySize.class, birth, today, ids, draft);
        add(height);
        add(weight);
        remember("height", height);
        remember("weight", weight);
        binder().forField(height)
                .withConverter(Converter.from(BodySizeForm::toHeight, length -> text(length)))
                .bind("height");
        binder().forField(weight)
                .withConverter(Converter.from(BodySizeForm::toWeight, mass -> text(mass)))
                .bind("weight");
        goOn();
    }

    @Override
    void fill(BodySize size) {
        height.setValue(text(size.height()));
        weight.setValue(text(size.weight()));
    }

    @Override
    Optional<String> problem() {
        var tall = toHeight(height.getValue()).getOrThrow(IllegalStateException::new);
        var heavy = toWeight(weight.getValue()).getOrThrow(IllegalStateException::new);
        if (tall == null && heavy == null) {
            return Optional.of(Texts.text("patient.size.missing"));
        }
        boolean plausible = tall == null || heavy == null || BodySize.isPlausible(tall, heavy);
        return plausible ? Optional.empty() : Optional.of(Texts.text("patient.size.implausible"));
    }

    static Result<@Nullable Length> toHeight(String typed) {
        return TypedNumber.parse(typed, 1, 30, 230, "patient.height.range")
                .map(number -> number.map(Length::ofCentimetres).orElse(null));
    }

    static Result<@Nullable Weight> toWeight(String typed) {
        return TypedNumber.parse(typed, 1, 1, 300, "patient.weight.range")
                .map(number -> number.map(Weight::ofKilograms).orElse(null));
    }

    static String text(@Nullable Length height) {
        return height == null ? "" : String.format(Locale.ROOT, "%.1f", height.millimetres() / MILLIMETRES);
    }

    static String text(@Nullable Weight weight) {
        return weight == null ? "" : String.format(Locale.ROOT, "%.1f", weight.kilograms());
    }
}
