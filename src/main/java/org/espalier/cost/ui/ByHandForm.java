package org.espalier.cost.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.function.Consumer;
import org.espalier.cost.Allowance;
import org.espalier.cost.ChargeService;
import org.espalier.cost.TariffItem;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;

/** What no rule knows of: how many, when, and why it is charged. */
final class ByHandForm extends Composite<Div> {

    /** What was filled in. */
    record Added(TariffItem item, LocalDate on, BigDecimal quantity, String reason) {}

    private final Select<TariffItem> item = new Select<>();
    private final BigDecimalField quantity = new BigDecimalField(Texts.text("cost.quantity"));
    private final DateEntryField on;
    private final TextField reason = new TextField(Texts.text("cost.reason"));
    private final LocalDate today;
    private final transient Consumer<Added> added;

    ByHandForm(LocalDate today, Consumer<Added> added) {
        this.today = today;
        this.added = added;
        on = new DateEntryField(Texts.text("cost.day"), () -> today);
        item.setLabel(Texts.text("cost.item"));
        item.setItems(TariffItem.charged());
        item.setItemLabelGenerator(Texts::of);
        item.setValue(TariffItem.PHYSIOTHERAPY);
        reason.setMaxLength(ChargeService.REASON_LENGTH);
        var fields = new Div(item, quantity, on, reason);
        fields.addClassName("form-fields");
        getContent().add(fields, new Button(Texts.text("cost.add.do"), click -> add()));
    }

    private void add() {
        var number = quantity.getValue();
        var day = on.getValue();
        quantity.setErrorMessage(Texts.text("cost.quantity.wrong"));
        quantity.setInvalid(number == null || number.signum() == 0 || !Allowance.isQuantity(number));
        on.setErrorMessage(Texts.text("cost.day.wrong"));
        on.setInvalid(day == null || day.isAfter(today));
        reason.setErrorMessage(Texts.text("cost.reason.missing"));
        reason.setInvalid(reason.getValue().strip().length() < ChargeService.LEAST_REASON);
        if (number != null && day != null && !quantity.isInvalid() && !on.isInvalid() && !reason.isInvalid()) {
            added.accept(new Added(item.getValue(), day, number, reason.getValue()));
        }
    }
}
