package org.espalier.patient.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.util.function.Consumer;
import org.espalier.kit.Texts;

/** Asks why a fact is withdrawn. */
final class WithdrawDialog extends Dialog {

    private static final int REASON_LENGTH = 200;

    WithdrawDialog(Consumer<String> withdraw) {
        setHeaderTitle(Texts.text("patient.withdraw.title"));
        var reason = new TextField(Texts.text("patient.reason"));
        reason.setMaxLength(REASON_LENGTH);
        reason.setWidthFull();
        reason.setErrorMessage(Texts.text("patient.reason.missing"));
        var confirm = new Button(Texts.text("patient.withdraw"), click -> {
            reason.setInvalid(reason.getValue().isBlank());
            if (!reason.isInvalid()) {
                close();
                withdraw.accept(reason.getValue().strip());
            }
        });
        confirm.addThemeVariants(ButtonVariant.PRIMARY);
        add(new Paragraph(Texts.text("patient.withdraw.help")), reason);
        getFooter().add(new Button(Texts.text("patient.withdraw.not"), click -> close()), confirm);
        reason.focus();
    }
}
