package org.espalier.patient.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.Binder;
import com.vaadin.flow.data.binder.Result;
import com.vaadin.flow.data.binder.ValidationResult;
import java.util.Optional;
import java.util.function.Function;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Angle;
import org.jspecify.annotations.Nullable;

/**
 * An angle in whole degrees and, where it goes in two directions, the word for its direction. Empty is not recorded.
 */
final class AngleCell extends Composite<Div> {

    /** Which of two directions an angle goes in. */
    enum Way {
        PLUS,
        MINUS
    }

    /**
     * What is measured.
     *
     * @param name as it stands in a message
     * @param least degrees, below zero when the angle goes in two directions
     * @param most degrees
     * @param word of a direction
     */
    record Measure(String name, int least, int most, Function<Way, String> word) {

        boolean isDirected() {
            return least < 0;
        }
    }

    private final Measure measure;
    private final TextField size;
    private final Select<Way> way = new Select<>();

    AngleCell(String label, Measure measure) {
        this.measure = measure;
        size = new TextField(label);
        size.setSuffixComponent(new Span(Texts.text("patient.degrees")));
        size.getElement().setAttribute("inputmode", "numeric");
        size.setMaxLength(3);
        way.setItemLabelGenerator(
                one -> one == null ? Texts.text("patient.way") : measure.word().apply(one));
        way.setEmptySelectionAllowed(true);
        way.setEmptySelectionCaption(Texts.text("patient.way"));
        way.setAriaLabel(Texts.text("patient.way.of", label, measure.name()));
        way.addValueChangeListener(change -> size.setInvalid(false));
        way.setVisible(measure.isDirected());
        if (measure.isDirected()) {
            way.setItems(Way.values());
        }
        getContent().addClassName("angle-cell");
        getContent().add(size, way);
    }

    void bind(Binder<?> binder) {
        binder.forField(size)
                .withValidator((typed, context) ->
                        problem().map(ValidationResult::error).orElseGet(ValidationResult::ok))
                .bind(one -> "", (one, value) -> {});
    }

    void remember(FindingForm<?> form, String name) {
        form.remember(name, size);
        form.remember(name + "-way", way, Way.class);
    }

    void setAngle(@Nullable Angle angle) {
        size.setValue(angle == null ? "" : Long.toString(Math.round(Math.abs(angle.degrees()))));
        way.setValue(angle == null ? null : wayOf(angle));
    }

    private @Nullable Way wayOf(Angle angle) {
        if (!measure.isDirected() || angle.degrees() == 0) {
            return null;
        }
        return angle.degrees() > 0 ? Way.PLUS : Way.MINUS;
    }

    /** Makes this cell say the same as another. */
    void take(AngleCell other) {
        size.setValue(other.size.getValue());
        way.setValue(other.way.getValue());
    }

    /** The angle that stands in the cell; empty when nothing does. */
    Optional<Angle> angle() {
        return read().getOrThrow(IllegalStateException::new);
    }

    private Optional<String> problem() {
        return read().getMessage();
    }

    private Result<Optional<Angle>> read() {
        var typed = size.getValue().strip();
        if (typed.isEmpty()) {
            return way.isEmpty() ? Result.ok(Optional.empty()) : Result.error(range());
        }
        if (!typed.matches("\\d{1,3}")) {
            return Result.error(range());
        }
        int degrees = Integer.parseInt(typed);
        if (degrees != 0 && measure.isDirected() && way.isEmpty()) {
            return Result.error(Texts.text("patient.way.missing", measure.name()));
        }
        int signed = way.getValue() == Way.MINUS ? -degrees : degrees;
        return signed < measure.least() || signed > measure.most()
                ? Result.error(range())
                : Result.ok(Optional.of(Angle.ofDegrees(signed)));
    }

    private String range() {
        return measure.isDirected()
                ? Texts.text(
                        "patient.angle.range.directed",
                        measure.name(),
                        -measure.least(),
                        measure.word().apply(Way.MINUS),
                        measure.most(),
                        measure.word().apply(Way.PLUS))
                : Texts.text("patient.angle.range", measure.name(), measure.least(), measure.most());
    }
}
