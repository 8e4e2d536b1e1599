package org.espalier.shell;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.login.LoginForm;
import com.vaadin.flow.component.login.LoginI18n;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Location;
import com.vaadin.flow.router.Route;
import org.espalier.access.SingleSignOn;
import org.espalier.kit.Texts;
import org.springframework.beans.factory.ObjectProvider;

/** The way in: name and password, or a passkey. */
@Route(value = "login", autoLayout = false)
@StyleSheet("themes/shell.css")
class LoginView extends Composite<Main> implements BeforeEnterObserver, HasDynamicTitle {

    private static final long serialVersionUID = 1;

    private final LoginForm form = new LoginForm();
    private final Paragraph refusal = new Paragraph();

    LoginView(DemoNotice notice, ObjectProvider<SingleSignOn> provider) {
        getContent().setClassName("login");
        form.setAction("login");
        form.setForgotPasswordButtonVisible(false);
        form.setI18n(texts(Texts.text("shell.login.refused")));
        refusal.setClassName("notice harm");
        refusal.getElement().setAttribute("role", "alert");
        refusal.setVisible(false);
        getContent()
                .add(
                        notice,
                        new H1(Texts.text("shell.house")),
                        purpose(),
                        refusal,
                        form,
                        PasskeyButton.signIn(
                                Texts.text("shell.login.passkey"), Texts.text("shell.login.passkey-failed")));
        provider.ifAvailable(one -> getContent().add(signOn(one)));
        getContent().add(help());
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        show(event.getLocation());
    }

    @Override
    public String getPageTitle() {
        return Texts.page("shell.login.title");
    }

    private void show(Location location) {
        var asked = location.getQueryParameters();
        form.setError(asked.getParameters().containsKey("error"));
        asked.getSingleParameter("wait")
                .filter(wait -> wait.matches("[0-9]{1,5}"))
                .ifPresent(wait -> refuse(Texts.text("shell.login.wait", Integer.valueOf(wait))));
        if (asked.getParameters().containsKey("sign-on")) {
            refuse(Texts.text("shell.login.sign-on-refused"));
        }
        if (asked.getParameters().containsKey("expired")) {
            refuse(Texts.text("shell.login.expired"));
        }
        if (asked.getParameters().containsKey("again")) {
            refuse(Texts.text("shell.login.again"));
        }
    }

    /** Leaves the page, for the provider answers elsewhere. */
    private static Anchor signOn(SingleSignOn provider) {
        var link = new Anchor(provider.start(), Texts.text("shell.login.sign-on", provider.name()));
        link.setRouterIgnore(true);
        link.setClassName("act");
        return link;
    }

    private void refuse(String why) {
        refusal.setText(why);
        refusal.setVisible(true);
    }

    private static Paragraph purpose() {
        var purpose = new Paragraph(Texts.text("shell.login.purpose"));
        purpose.setClassName("question");
        return purpose;
    }

    private static Paragraph help() {
        var help = new Paragraph(Texts.text("shell.login.help"));
        help.setClassName("small");
        return help;
    }

    private static LoginI18n texts(String refused) {
        var texts = LoginI18n.createDefault();
        texts.getForm().setTitle("");
        texts.getForm().setUsername(Texts.text("shell.login.name"));
        texts.getForm().setPassword(Texts.text("shell.login.password"));
        texts.getForm().setSubmit(Texts.text("shell.login.submit"));
        texts.getErrorMessage().setTitle(Texts.text("shell.login.refused-title"));
        texts.getErrorMessage().setMessage(refused);
        texts.getErrorMessage().setUsername(Texts.text("shell.login.name-missing"));
        texts.getErrorMessage().setPassword(Texts.text("shell.login.password-missing"));
        return texts;
    }
}
