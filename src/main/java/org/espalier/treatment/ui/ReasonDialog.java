package org.espalier.treatment.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.function.Function;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.TreatmentFact;
import org.espalier.treatment.TreatmentText;

/** Asks why something is withdrawn, and says what stands against it. */
final class ReasonDialog extends Dialog {

    ReasonDialog(Function<String, RecordOutcome> withdraw, Runnable done) {
        setHeaderTitle(Texts.text("treatment.withdraw.title"));
        var answer = new Div();
        answer.getElement().setAttribute("role", "alert");
        var reason = Choices.text("treatment.reason", TreatmentFact.REMARK_LENGTH);
        reason.setErrorMessage(Texts.text("treatment.reason.missing"));
        var confirm = new Button(Texts.text("treatment.withdraw"), click -> {
            reason.setInvalid(reason.getValue().isBlank());
            answer.removeAll();
            if (reason.isInvalid()) {
                return;
            }
            if (withdraw.apply(reason.getValue()) instanceof RecordOutcome.Stopped(var stops)) {
                stops.forEach(stop -> answer.add(PageParts.paragraph("harm", TreatmentText.of(stop))));
            } else {
                close();
                done.run();
            }
        });
        confirm.addThemeVariants(ButtonVariant.PRIMARY);
        add(new Paragraph(Texts.text("treatment.withdraw.help")), reason, answer);
        getFooter().add(new Button(Texts.text("treatment.cancel"), click -> close()), confirm);
        reason.focus();
    }
}
