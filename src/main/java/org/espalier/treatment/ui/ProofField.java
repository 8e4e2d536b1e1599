package org.espalier.treatment.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.PasswordField;
import org.espalier.access.SignAgain;
import org.espalier.kit.Texts;

/** Asks the person to prove again who they are, when their last proof is long ago. */
final class ProofField extends Composite<Div> {

    private final SignAgain signAgain;
    private final PasswordField password = new PasswordField(Texts.text("treatment.password"));

    ProofField(SignAgain signAgain) {
        this.signAgain = signAgain;
        password.setAutocomplete(Autocomplete.CURRENT_PASSWORD);
        password.setWidthFull();
        password.setVisible(false);
        getContent().add(password);
    }

    boolean isProved() {
        if (!signAgain.isNeeded()) {
            return true;
        }
        if (!password.isVisible()) {
            password.setVisible(true);
            password.focus();
            return false;
        }
        var answer = signAgain.confirm(password.getValue());
        password.setErrorMessage(Texts.text("treatment.password." + answer));
        password.setInvalid(answer != SignAgain.Answer.CONFIRMED);
        return answer == SignAgain.Answer.CONFIRMED;
    }
}
