package org.espalier.followup.ui;

import com.vaadin.flow.component.textfield.TextField;
import java.util.function.Consumer;
import org.espalier.kit.Texts;

/** Asks why. */
final class WhyDialog extends VisitDialog {

    private final transient Consumer<String> record;
    private final TextField why;

    WhyDialog(String title, Consumer<String> record) {
        super(title, title);
        this.record = record;
        why = note("followup.ask.why");
        why.setErrorMessage(Texts.text("followup.ask.why.missing"));
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
