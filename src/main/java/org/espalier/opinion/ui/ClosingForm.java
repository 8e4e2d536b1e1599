package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.Advice;
import org.espalier.opinion.ThreadId;
import org.espalier.platform.FormDraft;
import org.jspecify.annotations.Nullable;

/** Closes a question with what was decided and by whom. What is typed is kept until it is closed. */
class ClosingForm extends Composite<Div> {

    private final ThreadId thread;
    private final ThreadServices services;
    private final Runnable changed;
    private final FormDraft<Typed> draft;
    private final Select<Advice> decided = Parts.select("opinion.decided", List.of(Advice.values()));
    private final TextArea what = Parts.area("opinion.decided.text");
    private final TextField by = new TextField(Texts.text("opinion.decided.by"));

    /** A decision in the making. */
    record Typed(@Nullable Advice decided, String what, String by) {}

    ClosingForm(ThreadId thread, ThreadServices services, Runnable changed) {
        this.thread = thread;
        this.services = services;
        this.changed = changed;
        draft = new FormDraft<>(services.drafts(), "opinion-close", thread.value(), Typed.class);
        by.setMaxLength(200);
        by.setErrorMessage(Texts.text("opinion.decided.by.missing"));
        by.setValueChangeMode(ValueChangeMode.LAZY);
        draft.typed().ifPresent(this::show);
        Stream.<HasValue<?, ?>>of(decided, what, by)
                .forEach(field -> field.addValueChangeListener(
                        typed -> draft.keep(new Typed(decided.getValue(), what.getValue(), by.getValue()))));
        getContent().addClassName("advice-form");
        getContent()
                .add(
                        decided,
                        what,
                        by,
                        PageParts.paragraph("small", Texts.text("opinion.close.help")),
                        Parts.actions(new Button(Texts.text("opinion.close"), click -> close())));
    }

    private void show(Typed typed) {
        if (typed.decided() != null) {
            decided.setValue(typed.decided());
        }
        what.setValue(typed.what());
        by.setValue(typed.by());
    }

    private void close() {
        decided.setInvalid(decided.isEmpty());
        what.setInvalid(what.getValue().strip().length() < 3);
        by.setInvalid(by.getValue().strip().length() < 2);
        if (!decided.isInvalid() && !what.isInvalid() && !by.isInvalid()) {
            services.closings().close(thread, decided.getValue(), what.getValue(), by.getValue());
            draft.discard();
            changed.run();
        }
    }
}
