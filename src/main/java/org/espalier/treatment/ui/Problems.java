package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Focusable;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Map;
import org.espalier.kit.Texts;

/** What is to be mended in a form of several parts, each a way to its field. */
final class Problems extends Composite<Div> {

    Problems() {
        getContent().addClassNames("notice", "harm", "error-summary");
        getContent().getElement().setAttribute("role", "alert");
        getContent().setVisible(false);
    }

    /** Marks a field by whether what is demanded is given, and adds it to what is to be mended. */
    static void demand(Map<Component, String> missing, Component field, boolean given, String text) {
        if (field instanceof HasValidation validated) {
            validated.setInvalid(!given);
            validated.setErrorMessage(Texts.text(text));
        }
        if (!given) {
            missing.put(field, Texts.text(text));
        }
    }

    void show(Map<Component, String> problems) {
        getContent().removeAll();
        getContent().setVisible(!problems.isEmpty());
        if (!problems.isEmpty()) {
            var list = new UnorderedList();
            problems.forEach((field, text) -> list.add(new ListItem(Choices.link(text, () -> focus(field)))));
            getContent().add(new H2(Texts.text("treatment.problems", problems.size())), list);
            problems.keySet().stream().findFirst().ifPresent(Problems::focus);
        }
    }

    /** What was refused by something beyond the form. */
    void say(String text) {
        getContent().removeAll();
        getContent().add(new H2(Texts.text("treatment.refused")), new Div(text));
        getContent().setVisible(true);
        getContent().scrollIntoView();
    }

    private static void focus(Component field) {
        if (field instanceof Focusable<?> focusable) {
            focusable.focus();
        }
    }
}
