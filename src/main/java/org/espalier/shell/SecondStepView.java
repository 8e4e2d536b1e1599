package org.espalier.shell;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.spring.security.AuthenticationContext;
import org.espalier.access.SecondFactorService;
import org.espalier.access.SecondStep;
import org.espalier.access.SignAgain;
import org.espalier.kit.Texts;

/** The step after the password: a code, the passkey instead, or setting up codes for the first time. */
@Route(value = "login/code", autoLayout = false)
@StyleSheet("themes/shell.css")
class SecondStepView extends Composite<Main> implements HasDynamicTitle {

    private static final long serialVersionUID = 1;

    private final transient SecondStep step;
    private final TextField code = new TextField(Texts.text("shell.step.code"));

    SecondStepView(
            SecondStep step,
            SecondFactorService factors,
            SignAgain signAgain,
            AuthenticationContext authentication,
            DemoNotice notice) {
        this.step = step;
        getContent().setClassName("login");
        getContent().add(notice, new H1(Texts.text("shell.house")));
        step.left().ifPresent(left -> {
            switch (left) {
                case CODE -> askForCode();
                case PASSKEY -> askForPasskey();
                case SET_UP -> askToSetUp(factors, signAgain);
            }
        });
        getContent().add(new Button(Texts.text("shell.sign-out"), click -> authentication.logout()));
    }

    @Override
    public String getPageTitle() {
        return Texts.page("shell.step.title");
    }

    private void askForCode() {
        code.setHelperText(Texts.text("shell.step.code.help"));
        code.getElement().setAttribute("autocomplete", "one-time-code");
        code.setManualValidation(true);
        code.setMaxLength(40);
        var give = new Button(Texts.text("shell.step.give"), click -> give());
        give.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        give.addClickShortcut(Key.ENTER);
        code.focus();
        getContent().add(said("shell.step.say"), code, give, said("shell.step.lost"));
    }

    private void give() {
        switch (step.give(code.getValue())) {
            case CONFIRMED -> goIn();
            case WRONG -> refuse("shell.step.wrong");
            case WAIT -> refuse("shell.step.wait");
        }
    }

    private void refuse(String key) {
        code.setErrorMessage(Texts.text(key));
        code.setInvalid(true);
        code.focus();
    }

    private void askForPasskey() {
        getContent()
                .add(
                        said("shell.step.passkey"),
                        PasskeyButton.signIn(
                                Texts.text("shell.login.passkey"), Texts.text("shell.login.passkey-failed")));
    }

    private void askToSetUp(SecondFactorService factors, SignAgain signAgain) {
        getContent().add(said("shell.step.set-up"), new SecondFactorPanel(factors, signAgain, step::setUp, this::goIn));
    }

    /** A new page, so that it begins with the new session's id. */
    private void goIn() {
        getUI().ifPresent(ui -> ui.getPage().setLocation("/"));
    }

    private static Paragraph said(String key) {
        return new Paragraph(Texts.text(key));
    }
}
