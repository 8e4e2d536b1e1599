package org.espalier.followup.ui;

import com.vaadin.flow.component.textfield.TextField;
import java.util.function.Consumer;
import org.espalier.kit.Texts;

/** Asks why. */
final class WhyDialog extends VisitDialog {
    static final String DRAFT = "why";

    private final transient Consumer<String> record;
    private final TextField why;

    WhyDialog(String title, KeptFields kept, Consumer<String> record) {
        super(title, title, kept);
        this.record = record;
        why = note("followup.ask.why");
        why.setErrorMessage(Texts.text("followup.ask.why.missing"));
        kept.text("why", why).goOn();
    }

    @Override
    boolean save() {
        why.setInvalid(why.getValue().strip().length() < 3);
        if (why.isInvalid()) {
            return false;
        }
        record.accept(why.getValue().strip());
        return true;
    }
}
