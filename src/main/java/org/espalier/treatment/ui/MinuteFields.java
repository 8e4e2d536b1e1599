package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.IntegerField;
import java.util.Map;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.treatment.MeasuredMinutes;
import org.jspecify.annotations.Nullable;

/** How long it took by the clock; left empty it was not recorded. */
final class MinuteFields extends Composite<Div> {

    private final IntegerField theatre = field("treatment.minutes.theatre");
    private final IntegerField anaesthesia = field("treatment.minutes.anaesthesia");

    MinuteFields(Runnable changed) {
        theatre.setHelperText(Texts.text("treatment.minutes.help"));
        fields().forEach(field -> field.addValueChangeListener(change -> changed.run()));
        getContent().addClassName("form-fields");
        getContent().add(theatre, anaesthesia);
    }

    void fill(@Nullable Integer inTheatre, @Nullable Integer underAnaesthesia) {
        theatre.setValue(inTheatre);
        anaesthesia.setValue(underAnaesthesia);
    }

    @Nullable
    Integer theatre() {
        return theatre.getValue();
    }

    @Nullable
    Integer anaesthesia() {
        return anaesthesia.getValue();
    }

    /** Only when nothing is missing. */
    MeasuredMinutes minutes() {
        return new MeasuredMinutes(theatre(), anaesthesia());
    }

    void demand(Map<Component, String> missing) {
        fields().forEach(field -> Problems.demand(
                missing,
                field,
                field.getValue() == null || MeasuredMinutes.isPossible(field.getValue()),
                "treatment.minutes.impossible"));
    }

    private Stream<IntegerField> fields() {
        return Stream.of(theatre, anaesthesia);
    }

    private static IntegerField field(String label) {
        var field = new IntegerField(Texts.text(label));
        field.setMin(1);
        field.setMax(MeasuredMinutes.MOST);
        field.setSuffixComponent(new Span(Texts.text("treatment.minutes.unit")));
        field.setPlaceholder(Texts.text("treatment.not-recorded"));
        return field;
    }
}
