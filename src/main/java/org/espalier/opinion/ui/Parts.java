package org.espalier.opinion.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.Collectors;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.opinion.Advice;
import org.espalier.opinion.Question;
import org.jspecify.annotations.Nullable;

/** What the screens of opinions are made of. */
final class Parts {

    private Parts() {}

    static Div actions(Component... buttons) {
        var actions = new Div(buttons);
        actions.addClassName("actions");
        return actions;
    }

    /** One of a few words. */
    static <T extends Enum<T>> Select<T> select(String key, List<T> items) {
        var select = new Select<T>();
        select.setLabel(Texts.text(key));
        select.setItems(items);
        select.setItemLabelGenerator(Texts::of);
        select.setErrorMessage(Texts.text("opinion.choose"));
        return select;
    }

    /** As many words as are wanted. */
    static TextArea area(String key) {
        var area = new TextArea(Texts.text(key));
        area.setMaxLength(Question.LENGTH);
        area.setValueChangeMode(ValueChangeMode.LAZY);
        area.setErrorMessage(Texts.text("opinion.say-it"));
        return area;
    }

    static String advice(List<Advice> wanted) {
        return wanted.stream().map(Texts::of).collect(Collectors.joining(", "));
    }

    /** {@code Film 2, month 14}: months are counted from the child's first film. */
    static String atMonth(String what, @Nullable Integer months) {
        return months == null ? what : Texts.text("opinion.at-month", what, months);
    }

    static String day(Instant at, ZoneId zone) {
        return DateText.of(at.atZone(zone).toLocalDate());
    }

    static String moment(Instant at, ZoneId zone) {
        var time = DateTimeFormatter.ofPattern("HH:mm", Texts.language()).format(at.atZone(zone));
        return Texts.text("opinion.moment", day(at, zone), time);
    }
}
