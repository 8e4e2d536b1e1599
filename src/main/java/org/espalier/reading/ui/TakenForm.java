package org.espalier.reading.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.FieldSet;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.data.binder.Binder;
import com.vaadin.flow.data.binder.ValidationException;
import java.util.function.Consumer;
import org.espalier.kit.Texts;
import org.espalier.reading.FilmTaken;
import org.espalier.reading.LimbsShown;
import org.espalier.reading.Seen;
import org.espalier.science.exposure.FilmConditions.Marker;
import org.espalier.science.exposure.FilmConditions.Ossification;
import org.espalier.science.exposure.FilmConditions.Patella;
import org.espalier.science.exposure.FilmConditions.Stance;
import org.espalier.science.exposure.FilmConditions.Technique;
import org.espalier.science.exposure.FilmConditions.View;
import org.espalier.science.quantity.Side;

/** How the film was taken. Everything starts as not recorded; each answer is kept at once, one out of range is not. */
class TakenForm extends Composite<Div> {

    private final Binder<FilmTaken> binder = new Binder<>(FilmTaken.class);
    private final Select<Technique> technique = select("technique", Technique.values());
    private final IntegerField parts = whole("parts", 2, 9);
    private final Select<Seen> step = select("step", Seen.values());
    private final Select<Seen> wavy = select("wavyCortex", Seen.values());

    TakenForm(FilmTaken taken, Consumer<FilmTaken> changed) {
        var child = group("reading.taken.child", select("stance", Stance.values()), lift(), liftSide());
        var limbs = group(
                "reading.taken.limbs",
                select("patellaRight", Patella.values()),
                select("patellaLeft", Patella.values()),
                whole("flexionRight", 0, 90),
                whole("flexionLeft", 0, 90),
                select("ossification", Ossification.values()));
        var picture = group(
                "reading.taken.picture",
                select("view", View.values()),
                technique,
                parts,
                step,
                wavy,
                select("contrast", Seen.values()),
                select("limbsShown", LimbsShown.values()));
        var scale = group(
                "reading.taken.scale",
                number("ballMm", 5, 100),
                number("ballOffMm", -300, 300),
                select("marker", Marker.values()));
        getContent().add(child, limbs, picture, scale);
        getContent().addClassName("room-taken");
        binder.readRecord(taken);
        askWhatApplies();
        binder.addValueChangeListener(event -> {
            askWhatApplies();
            tell(changed);
        });
    }

    private void tell(Consumer<FilmTaken> changed) {
        try {
            changed.accept(binder.writeRecord());
        } catch (ValidationException outOfRange) {
            // The field says which numbers it takes; what was kept stays.
        }
    }

    private void askWhatApplies() {
        boolean stitched = technique.getValue() == Technique.STITCHED;
        parts.setVisible(stitched);
        step.setVisible(stitched);
        wavy.setVisible(technique.getValue() == Technique.SLOT_SCAN);
    }

    private NumberField lift() {
        return number("liftMm", 1, 200);
    }

    private Select<Side> liftSide() {
        var side = select("liftSide", Side.values());
        side.setEmptySelectionAllowed(true);
        side.setEmptySelectionCaption(Texts.text("reading.taken.no-lift"));
        return side;
    }

    private <E extends Enum<E>> Select<E> select(String property, E[] items) {
        var select = new Select<E>();
        select.setLabel(Texts.text("reading.taken." + property));
        select.setItems(items);
        select.setItemLabelGenerator(item -> item == null ? Texts.text("reading.taken.no-lift") : Texts.of(item));
        binder.forField(select).bind(property);
        return select;
    }

    private NumberField number(String property, double least, double most) {
        var field = new NumberField(Texts.text("reading.taken." + property));
        field.setStep(0.1);
        bind(field, property, least, most);
        return field;
    }

    private IntegerField whole(String property, int least, int most) {
        var field = new IntegerField(Texts.text("reading.taken." + property));
        bind(field, property, least, most);
        return field;
    }

    private <N extends Number> void bind(HasValue<?, N> field, String property, double least, double most) {
        binder.forField(field)
                .withValidator(
                        value -> value == null || (value.doubleValue() >= least && value.doubleValue() <= most),
                        Texts.text("reading.taken.range", least, most))
                .bind(property);
    }

    private static FieldSet group(String legend, Component... fields) {
        var group = new FieldSet(Texts.text(legend));
        group.add(fields);
        return group;
    }
}
