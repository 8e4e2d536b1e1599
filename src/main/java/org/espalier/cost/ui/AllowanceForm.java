package org.espalier.cost.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.espalier.cost.Allowance;
import org.espalier.cost.TariffItem;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;
import org.espalier.treatment.ProcedureKind;

/** How much an operation takes of something, from a day on. */
final class AllowanceForm extends Composite<Div> {

    private final Select<Optional<ProcedureKind>> kind = new Select<>();
    private final Select<TariffItem> item = new Select<>();
    private final BigDecimalField quantity = new BigDecimalField(Texts.text("cost.quantity"));
    private final DateEntryField from;
    private final transient Consumer<Allowance> agreed;

    AllowanceForm(LocalDate today, Consumer<Allowance> agreed) {
        this.agreed = agreed;
        from = new DateEntryField(Texts.text("cost.valid-from"), () -> today);
        kind.setLabel(Texts.text("cost.operation"));
        kind.setItems(Stream.concat(
                        Stream.of(Optional.<ProcedureKind>empty()),
                        Stream.of(ProcedureKind.values())
                                .filter(one -> !one.isOutsideTheatre())
                                .map(Optional::of))
                .toList());
        kind.setItemLabelGenerator(AllowanceForm::name);
        kind.setValue(Optional.empty());
        item.setLabel(Texts.text("cost.item"));
        item.setItems(TariffItem.allowed());
        item.setItemLabelGenerator(Texts::of);
        item.setValue(TariffItem.THEATRE_MINUTE);
        var fields = new Div(kind, item, quantity, from);
        fields.addClassName("form-fields");
        getContent().add(fields, new Button(Texts.text("cost.agree"), click -> agree()));
    }

    static String name(Optional<ProcedureKind> kind) {
        return kind.map(Texts::of).orElseGet(() -> Texts.text("cost.every-operation"));
    }

    private void agree() {
        var number = quantity.getValue();
        var day = from.getValue();
        quantity.setErrorMessage(Texts.text("cost.quantity.wrong"));
        quantity.setInvalid(number == null || !Allowance.isQuantity(number));
        from.setErrorMessage(Texts.text("cost.valid-from.missing"));
        from.setInvalid(day == null);
        if (number != null && day != null && !quantity.isInvalid()) {
            agreed.accept(Allowance.of(kind.getValue(), item.getValue(), number, day));
        }
    }
}
