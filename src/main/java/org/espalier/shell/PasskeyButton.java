package org.espalier.shell;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;

/**
 * A button that has the browser ask for a passkey: to sign in with one, or to add one to the account. What it does happens
 * in the browser and at the server's own addresses for passkeys; {@code assets/passkey.js} holds both ends together.
 */
final class PasskeyButton extends Composite<Div> {

    private static final long serialVersionUID = 1;

    private final String deed;

    private PasskeyButton(String deed, String text, String refusal) {
        this.deed = deed;
        var button = new Button(text);
        var refused = new Paragraph(refusal);
        refused.setClassName("notice harm");
        refused.getElement().setAttribute("role", "alert").setAttribute("hidden", true);
        getContent().setClassName("passkey");
        getContent().add(button, refused);
    }

    /** A button to sign in with a passkey. */
    static PasskeyButton signIn(String text, String refusal) {
        return new PasskeyButton("sign-in", text, refusal);
    }

    /** A button to add a passkey to the account of whoever is signed in. */
    static PasskeyButton register(String text, String refusal) {
        return new PasskeyButton("register", text, refusal);
    }

    @Override
    protected void onAttach(AttachEvent attach) {
        getElement().setAttribute("data-passkey", deed);
        attach.getUI().getPage().addJavaScript("context://assets/passkey.js");
    }
}
