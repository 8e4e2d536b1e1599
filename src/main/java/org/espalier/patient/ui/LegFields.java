package org.espalier.patient.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.espalier.kit.Texts;
import org.espalier.patient.LegAngle;
import org.espalier.patient.LegAnswer;
import org.espalier.patient.LegExamination;
import org.espalier.patient.LegSign;
import org.espalier.patient.LegText;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/**
 * What is found on both legs, right beside left. What is left alone is not recorded; nothing is filled in by itself.
 */
final class LegFields extends Composite<Div> {

    /** The fields of one leg. */
    private record Leg(Side side, Map<LegAngle, AngleCell> angles, Map<LegSign, Select<LegAnswer>> signs) {

        static Leg of(Side side) {
            return new Leg(side, new EnumMap<>(LegAngle.class), new EnumMap<>(LegSign.class));
        }
    }

    private final Leg right = Leg.of(Side.RIGHT);
    private final Leg left = Leg.of(Side.LEFT);
    private final FindingForm<?> form;

    /** @param form which binds and remembers the fields */
    LegFields(FindingForm<?> form) {
        this.form = form;
        getContent().addClassName("leg-fields");
        Arrays.stream(LegSign.values()).forEach(sign -> getContent().add(row(sign)));
        Arrays.stream(LegAngle.values()).forEach(angle -> getContent().add(row(angle)));
    }

    void fill(Side side, LegExamination found) {
        leg(side)
                .angles()
                .forEach((what, cell) -> cell.setAngle(found.angle(what).orElse(null)));
        leg(side)
                .signs()
                .forEach((sign, field) -> field.setValue(found.answer(sign).orElse(null)));
    }

    /** What stands in the fields of a leg, which are all right by themselves. */
    LegExamination read(Side side) {
        var angles = new EnumMap<LegAngle, Angle>(LegAngle.class);
        leg(side).angles().forEach((what, cell) -> cell.angle().ifPresent(angle -> angles.put(what, angle)));
        var signs = new EnumMap<LegSign, LegAnswer>(LegSign.class);
        leg(side).signs().forEach((sign, field) -> field.getOptionalValue()
                .ifPresent(answer -> signs.put(sign, answer)));
        return new LegExamination(angles, signs);
    }

    private Leg leg(Side side) {
        return side == Side.RIGHT ? right : left;
    }

    private Component row(LegAngle what) {
        var ofRight = cell(right, what);
        var ofLeft = cell(left, what);
        return row(Texts.of(what), ofRight, ofLeft, () -> ofLeft.take(ofRight));
    }

    private Component row(LegSign sign) {
        var ofRight = field(right, sign);
        var ofLeft = field(left, sign);
        return row(Texts.of(sign), ofRight, ofLeft, () -> ofLeft.setValue(ofRight.getValue()));
    }

    private AngleCell cell(Leg leg, LegAngle what) {
        var measure = new AngleCell.Measure(
                Texts.of(what), what.least(), what.most(), way -> LegText.direction(what, way == AngleCell.Way.PLUS));
        var cell = new AngleCell(Texts.of(leg.side()), measure);
        cell.bind(form.binder());
        cell.remember(form, leg.side() + "-" + what);
        leg.angles().put(what, cell);
        return cell;
    }

    private Select<LegAnswer> field(Leg leg, LegSign sign) {
        var field = new Select<LegAnswer>();
        field.setLabel(Texts.of(leg.side()));
        field.setItems(List.copyOf(sign.answers()));
        field.setEmptySelectionAllowed(true);
        field.setEmptySelectionCaption(Texts.text("patient.not-recorded"));
        field.setItemLabelGenerator(one -> one == null ? Texts.text("patient.not-recorded") : LegText.of(one));
        form.fields()
                .add(
                        leg.side() + "-" + sign,
                        field,
                        () -> field.isEmpty() ? "" : field.getValue().name(),
                        text -> field.setValue(sign.answers().stream()
                                .filter(answer -> answer.name().equals(text))
                                .findFirst()
                                .orElse(null)));
        leg.signs().put(sign, field);
        return field;
    }

    private Component row(String name, Component ofRight, Component ofLeft, Runnable copy) {
        var same = new Button(Texts.text("patient.left-same"), click -> {
            copy.run();
            form.keep();
        });
        same.addClassName("link");
        same.setAriaLabel(Texts.text("patient.left-same.of", name));
        var heading = new Div(new Span(name), same);
        heading.addClassName("leg-heading");
        ofRight.addClassName("right");
        ofLeft.addClassName("left");
        var row = new Div(heading, ofRight, ofLeft);
        row.addClassName("leg-row");
        row.getElement().setAttribute("role", "group");
        row.getElement().setAttribute("aria-label", name);
        return row;
    }
}
