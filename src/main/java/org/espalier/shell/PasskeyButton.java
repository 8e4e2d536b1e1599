package org.espalier.shell;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;

/**
 * A button that has the browser ask for a passkey: to sign in with one, or to add one to the account. What it does
 * happens in the browser and at the server's own addresses for passkeys; {@code assets/passkey.js} holds both ends
 * together.
 */
final class PasskeyButton extends Composite<Div> {

    private static final long serialVersionUID = 1;

    private final String deed;

    private PasskeyButton(String deed, String text, String refusal) {
        this.deed = deed;
        getContent().setClassName("passkey");
        getContent().add(new Button(text), hidden(refusal, "notice harm", "alert"));
    }

    /** A button to sign in with a passkey. */
    static PasskeyButton signIn(String text, String refusal) {
        return new PasskeyButton("sign-in", text, refusal);
    }

    /** A button to add a passkey to the account of whoever is signed in. */
    static PasskeyButton register(String text, String added, String refusal) {
        var button = new PasskeyButton("register", text, refusal);
        button.getContent().add(hidden(added, "notice", "status"));
        return button;
    }

    @Override
    protected void onAttach(AttachEvent attach) {
        getElement().setAttribute("data-passkey", deed);
        attach.getUI().getPage().addJavaScript("context://assets/passkey.js");
    }

    private static Paragraph hidden(String text, String look, String role) {
        var said = new Paragraph(text);
        said.setClassName(look);
        said.getElement().setAttribute("role", role).setAttribute("hidden", true);
        return said;
    }
}
