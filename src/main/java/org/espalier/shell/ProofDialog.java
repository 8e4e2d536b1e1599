package org.espalier.shell;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.PasswordField;
import org.espalier.access.SignAgain;
import org.espalier.kit.Texts;

/** Asks for the password again before a change of how a person gets in: somebody else may sit there by now. */
final class ProofDialog extends Dialog {

    private static final long serialVersionUID = 1;

    private final transient SignAgain signAgain;
    private final transient Runnable deed;
    private final PasswordField password = new PasswordField(Texts.text("shell.account.current"));

    private ProofDialog(SignAgain signAgain, Runnable deed) {
        this.signAgain = signAgain;
        this.deed = deed;
        setHeaderTitle(Texts.text("shell.proof"));
        password.setManualValidation(true);
        password.setWidthFull();
        password.setAutofocus(true);
        password.getElement().setAttribute("autocomplete", "current-password");
        var prove = new Button(Texts.text("shell.proof.give"), click -> give());
        prove.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        prove.addClickShortcut(Key.ENTER);
        add(new Paragraph(Texts.text("shell.proof.say")), password);
        getFooter().add(new Button(Texts.text("shell.cancel"), click -> close()), prove);
    }

    /** Does the deed at once when the last proof is fresh, else once the password was given. */
    static void before(SignAgain signAgain, Runnable deed) {
        if (signAgain.isNeeded()) {
            new ProofDialog(signAgain, deed).open();
        } else {
            deed.run();
        }
    }

    private void give() {
        var answer = signAgain.confirm(password.getValue());
        if (answer == SignAgain.Answer.CONFIRMED) {
            close();
            deed.run();
            return;
        }
        password.setErrorMessage(Texts.text("shell.proof." + answer));
        password.setInvalid(true);
        password.focus();
    }
}
