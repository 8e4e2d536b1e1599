package org.espalier.film.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.util.function.Consumer;
import org.espalier.film.FilmWish;
import org.espalier.kit.Texts;

/** Asks why something is no longer to be shown. */
final class ReasonDialog extends Dialog {

    ReasonDialog(String title, String help, Consumer<String> confirmed) {
        setHeaderTitle(title);
        var reason = new TextField(Texts.text("film.step.reason"));
        reason.setMaxLength(FilmWish.REASON_LENGTH);
        reason.setWidthFull();
        reason.setErrorMessage(Texts.text("film.step.reason.missing"));
        var confirm = new Button(title, click -> {
            reason.setInvalid(reason.getValue().isBlank());
            if (!reason.isInvalid()) {
                close();
                confirmed.accept(reason.getValue().strip());
            }
        });
        confirm.addThemeVariants(ButtonVariant.PRIMARY);
        add(new Paragraph(help), reason);
        getFooter().add(new Button(Texts.text("film.cancel"), click -> close()), confirm);
    }
}
