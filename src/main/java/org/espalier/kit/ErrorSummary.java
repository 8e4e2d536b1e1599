package org.espalier.kit;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Focusable;
import com.vaadin.flow.component.HasLabel;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.data.binder.BinderValidationStatus;
import com.vaadin.flow.data.binder.BindingValidationStatus;

/**
 * At the top of a form: what is to be mended, each a way to its field. It shows itself only when there is something.
 */
public class ErrorSummary extends Composite<Div> {

    /** Hidden until there is something to say. */
    public ErrorSummary() {
        getContent().addClassNames("notice", "harm", "error-summary");
        getContent().getElement().setAttribute("role", "alert");
        getContent().setVisible(false);
    }

    /** Shows the field errors of a form, or hides when there are none. */
    public void show(BinderValidationStatus<?> status) {
        var errors = status.getFieldValidationErrors();
        getContent().removeAll();
        getContent().setVisible(!errors.isEmpty());
        if (!errors.isEmpty()) {
            var list = new UnorderedList();
            errors.forEach(error -> list.add(new ListItem(link(error))));
            getContent().add(new H2(Texts.text("kit.errors", errors.size())), list);
            errors.stream().findFirst().ifPresent(error -> focus(error.getField()));
        }
    }

    /** Nothing to say any more. */
    public void clear() {
        getContent().setVisible(false);
    }

    private static Button link(BindingValidationStatus<?> error) {
        var field = error.getField();
        var label = field instanceof HasLabel labelled ? labelled.getLabel() : "";
        var text = Texts.text("kit.error", label, error.getMessage().orElse(""));
        var link = new Button(text, click -> focus(field));
        link.addClassName("link");
        return link;
    }

    private static void focus(Object field) {
        if (field instanceof Focusable<?> focusable) {
            focusable.focus();
        }
    }
}
