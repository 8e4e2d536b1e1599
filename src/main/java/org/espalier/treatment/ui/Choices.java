package org.espalier.treatment.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Collection;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.TreatmentText;

/** Fields and texts as the screens of treatment use them. */
final class Choices {

    private Choices() {}

    static <E extends Enum<E>> Select<E> of(String label, Collection<E> constants) {
        var select = new Select<E>();
        select.setLabel(Texts.text(label));
        select.setItems(constants);
        select.setItemLabelGenerator(one -> one == null ? Texts.text("treatment.not-recorded") : Texts.of(one));
        return select;
    }

    static <E extends Enum<E>> Select<E> optional(String label, Collection<E> constants) {
        var select = of(label, constants);
        select.setEmptySelectionAllowed(true);
        select.setEmptySelectionCaption(Texts.text("treatment.not-recorded"));
        return select;
    }

    static Select<PhysisKey> physis(Collection<PhysisKey> physes) {
        var select = new Select<PhysisKey>();
        select.setLabel(Texts.text("treatment.physis"));
        select.setItems(physes);
        select.setItemLabelGenerator(one -> one == null ? Texts.text("treatment.whole-limb") : TreatmentText.of(one));
        return select;
    }

    static <E extends Enum<E>> RadioButtonGroup<E> radio(String label, Collection<E> constants) {
        var group = new RadioButtonGroup<E>();
        group.setLabel(Texts.text(label));
        group.setItems(constants);
        group.setItemLabelGenerator(Texts::of);
        return group;
    }

    static TextField text(String label, int longest) {
        var field = new TextField(Texts.text(label));
        field.setMaxLength(longest);
        field.setWidthFull();
        return field;
    }

    static TextArea area(String label, int longest) {
        var field = new TextArea(Texts.text(label));
        field.setMaxLength(longest);
        field.setWidthFull();
        return field;
    }

    static String notRecorded() {
        return Texts.text("treatment.not-recorded");
    }

    static Span limb(Side side, String text) {
        var span = new Span(text);
        span.addClassName(side == Side.RIGHT ? "limb-right" : "limb-left");
        return span;
    }

    static Button link(String text, Runnable action) {
        var button = new Button(text, click -> action.run());
        button.addClassName("link");
        return button;
    }
}
