package org.espalier.shell;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.spring.security.AuthenticationContext;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import org.espalier.access.PasskeyService;
import org.espalier.access.PasswordProblem;
import org.espalier.access.PasswordService;
import org.espalier.access.SecondFactorService;
import org.espalier.access.SessionService;
import org.espalier.access.SignAgain;
import org.espalier.access.SignedInStaff;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.Texts;
import org.jspecify.annotations.Nullable;

/** How do I get in? The person's own password and passkeys; for a newcomer the only place there is. */
@Route("account")
class AccountView extends Composite<Div> implements HasDynamicTitle {

    private static final long serialVersionUID = 1;

    private final transient PasswordService passwords;
    private final transient SecondFactorService factors;
    private final transient SignAgain signAgain;
    private final transient AuthenticationContext authentication;
    private @Nullable SessionsPanel sessionsPanel;
    private final PasswordField current = field("shell.account.current", "current-password");
    private final PasswordField fresh = field("shell.account.fresh", "new-password");
    private final Section codes = new Section();
    private final PasswordField again = field("shell.account.again", "new-password");

    AccountView(
            PasswordService passwords,
            SecondFactorService factors,
            SignAgain signAgain,
            PasskeyService passkeys,
            SessionService sessions,
            SiteService sites,
            AuthenticationContext authentication) {
        this.passwords = passwords;
        this.factors = factors;
        this.signAgain = signAgain;
        this.authentication = authentication;
        fresh.setHelperText(Texts.text("shell.account.rule"));
        getContent().setClassName("screen account");
        getContent().add(new H1(Texts.text("shell.account.title")));
        boolean newcomer = authentication
                .getAuthenticatedUser(SignedInStaff.class)
                .filter(SignedInStaff::mustChangePassword)
                .isPresent();
        if (newcomer) {
            getContent().add(notice("shell.account.newcomer"));
        }
        getContent().add(password());
        if (!newcomer) {
            var zone = sites.mine().stream().findFirst().map(Site::zone).orElse((ZoneId) ZoneOffset.UTC);
            sessionsPanel = new SessionsPanel(sessions, signAgain, zone);
            getContent().add(new PasskeysPanel(passkeys, signAgain, zone, sessionsPanel::show), codes, sessionsPanel);
            showCodes();
        }
    }

    @Override
    public String getPageTitle() {
        return Texts.page("shell.account.title");
    }

    private Section password() {
        var change = new Button(Texts.text("shell.account.change"), click -> change());
        change.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        return new Section(new H2(Texts.text("shell.account.password")), current, fresh, again, change);
    }

    private void showCodes() {
        var state = factors.state();
        var panel = new SecondFactorPanel(factors, signAgain, factors::confirm, this::changed);
        codes.removeAll();
        codes.add(
                new H2(Texts.text("shell.factor")),
                new Paragraph(
                        state.on()
                                ? Texts.text("shell.factor.on", state.recoveryCodes())
                                : Texts.text("shell.factor.off")),
                panel);
        if (state.on()) {
            codes.add(new Button(
                    Texts.text("shell.factor.remove"), click -> ProofDialog.before(signAgain, this::removeCodes)));
        }
    }

    private void removeCodes() {
        factors.remove();
        changed();
    }

    /** Other sessions ended with it. */
    private void changed() {
        showCodes();
        Objects.requireNonNull(sessionsPanel).show();
    }

    private void change() {
        current.setInvalid(false);
        fresh.setInvalid(false);
        again.setInvalid(false);
        if (!fresh.getValue().equals(again.getValue())) {
            refuse(again, Texts.text("shell.account.differ"));
            return;
        }
        passwords
                .change(current.getValue(), fresh.getValue())
                .ifPresentOrElse(
                        problem ->
                                refuse(problem == PasswordProblem.CURRENT_WRONG ? current : fresh, Texts.of(problem)),
                        authentication::logout);
    }

    private static void refuse(PasswordField field, String why) {
        field.setErrorMessage(why);
        field.setInvalid(true);
        field.focus();
    }

    private static PasswordField field(String label, String autocomplete) {
        var field = new PasswordField(Texts.text(label));
        field.setManualValidation(true);
        field.getElement().setAttribute("autocomplete", autocomplete);
        return field;
    }

    private static Paragraph notice(String key) {
        var notice = new Paragraph(Texts.text(key));
        notice.setClassName("notice soon");
        return notice;
    }
}
