package org.espalier.shell;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Optional;
import java.util.function.Function;
import org.espalier.access.RecoveryCodes;
import org.espalier.access.SecondFactorService;
import org.espalier.access.SecondFactorSetUp;
import org.espalier.access.SignAgain;
import org.espalier.kit.Texts;

/** Sets up codes: a picture for the app on the telephone, the first code, and the recovery codes, shown this once. */
final class SecondFactorPanel extends Composite<Div> {

    private static final long serialVersionUID = 1;

    private final transient SignAgain signAgain;
    private final transient Function<String, Optional<RecoveryCodes>> confirm;
    private final transient Runnable done;
    private final TextField code = new TextField(Texts.text("shell.step.first-code"));

    /**
     * @param confirm takes the first code
     * @param done when the recovery codes were kept
     */
    SecondFactorPanel(
            SecondFactorService factors,
            SignAgain signAgain,
            Function<String, Optional<RecoveryCodes>> confirm,
            Runnable done) {
        this.signAgain = signAgain;
        this.confirm = confirm;
        this.done = done;
        getContent().setClassName("second-factor");
        getContent()
                .add(new Button(
                        Texts.text("shell.factor.begin"),
                        click -> ProofDialog.before(signAgain, () -> show(factors.begin()))));
    }

    private void show(SecondFactorSetUp setUp) {
        var picture = new Image(QrPicture.of(setUp.address()), Texts.text("shell.factor.picture"));
        picture.setClassName("qr");
        var secret = new Span(setUp.secret().replaceAll("(.{4})(?=.)", "$1 "));
        secret.setClassName("secret");
        code.setManualValidation(true);
        code.getElement().setAttribute("autocomplete", "one-time-code");
        var give = new Button(Texts.text("shell.factor.confirm"), click -> ProofDialog.before(signAgain, this::give));
        give.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getContent().removeAll();
        getContent()
                .add(
                        new Paragraph(Texts.text("shell.factor.scan")),
                        picture,
                        new Paragraph(Texts.text("shell.factor.type")),
                        secret,
                        code,
                        give);
    }

    private void give() {
        confirm.apply(code.getValue()).ifPresentOrElse(this::tell, () -> {
            code.setErrorMessage(Texts.text("shell.factor.wrong"));
            code.setInvalid(true);
            code.focus();
        });
    }

    private void tell(RecoveryCodes codes) {
        var list = new OrderedList();
        list.setClassName("recovery-codes");
        codes.codes().forEach(one -> list.add(new ListItem(one)));
        var told = new Paragraph(Texts.text("shell.factor.recovery"));
        told.setClassName("notice soon");
        told.getElement().setAttribute("role", "status");
        getContent().removeAll();
        getContent().add(told, list, new Button(Texts.text("shell.factor.kept"), click -> done.run()));
    }
}
