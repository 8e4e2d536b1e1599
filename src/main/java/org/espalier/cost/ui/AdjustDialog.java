package org.espalier.cost.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.util.function.BiConsumer;
import org.espalier.cost.Allowance;
import org.espalier.cost.Charge;
import org.espalier.cost.ChargeService;
import org.espalier.kit.Texts;

/** Asks how many there were in truth, and why. */
final class AdjustDialog extends Dialog {

    /** What is to stand in the charge's place; none of it takes the charge back. */
    record Adjusted(BigDecimal quantity, String reason) {}

    AdjustDialog(Charge charge, BiConsumer<Charge, Adjusted> adjusted) {
        setHeaderTitle(Texts.text("cost.adjust"));
        var quantity = new BigDecimalField(
                Texts.text("cost.adjust.quantity", Texts.of(charge.line().item())));
        quantity.setValue(charge.line().quantity().stripTrailingZeros());
        quantity.setErrorMessage(Texts.text("cost.quantity.wrong"));
        quantity.setWidthFull();
        var reason = new TextField(Texts.text("cost.reason"));
        reason.setMaxLength(ChargeService.REASON_LENGTH);
        reason.setErrorMessage(Texts.text("cost.reason.missing"));
        reason.setWidthFull();
        var confirm = new Button(Texts.text("cost.adjust"), click -> {
            var number = quantity.getValue();
            quantity.setInvalid(number == null || !Allowance.isQuantity(number));
            reason.setInvalid(reason.getValue().strip().length() < ChargeService.LEAST_REASON);
            if (number != null && !quantity.isInvalid() && !reason.isInvalid()) {
                close();
                adjusted.accept(charge, new Adjusted(number, reason.getValue()));
            }
        });
        confirm.addThemeVariants(ButtonVariant.PRIMARY);
        add(new Paragraph(Texts.text("cost.adjust.what")), quantity, reason);
        getFooter().add(new Button(Texts.text("cost.cancel"), click -> close()), confirm);
    }
}
