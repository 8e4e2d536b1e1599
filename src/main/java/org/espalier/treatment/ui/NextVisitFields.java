package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Map;
import java.util.function.Supplier;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.treatment.NextLook;
import org.jspecify.annotations.Nullable;

/** When the child comes again, and what for; one touch for what is common. */
final class NextVisitFields extends Composite<Div> {

    private final DateEntryField on;
    private final TextField why = Choices.text("treatment.next.why", NextLook.LENGTH);
    private final Runnable changed;

    /**
     * @param done the day of the procedure, when it is known
     * @param changed told of every change by the reader
     */
    NextVisitFields(LocalDate today, Supplier<@Nullable LocalDate> done, Runnable changed) {
        this.changed = changed;
        on = new DateEntryField(Texts.text("treatment.next.on"), () -> today);
        on.addTypingListener(changed);
        why.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                changed.run();
            }
        });
        var quick = new Div();
        quick.addClassName("quick");
        for (var pick : NextPick.values()) {
            quick.add(new Button(Texts.of(pick), click -> take(pick, done.get())));
        }
        var fields = new Div(on, why);
        fields.addClassName("form-fields");
        getContent().add(quick, fields);
    }

    void type(String day, String reason) {
        on.type(day);
        why.setValue(reason);
    }

    String day() {
        return on.typed();
    }

    String reason() {
        return why.getValue();
    }

    NextLook look() {
        return new NextLook(on.getValue(), why.getValue());
    }

    void demand(Map<Component, String> missing, @Nullable LocalDate done) {
        Problems.demand(missing, on, on.getValue() != null, "treatment.next.on.missing");
        if (done != null && on.getValue() != null) {
            Problems.demand(missing, on, !on.getValue().isBefore(done), "treatment.next.before");
        }
        Problems.demand(missing, why, !why.getValue().isBlank(), "treatment.next.why.missing");
    }

    private void take(NextPick pick, @Nullable LocalDate done) {
        if (done != null) {
            type(DateText.typed(pick.after(done)), pick.why());
            changed.run();
        }
    }
}
