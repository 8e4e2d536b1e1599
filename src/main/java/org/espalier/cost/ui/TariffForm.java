package org.espalier.cost.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Optional;
import java.util.function.Consumer;
import org.espalier.cost.TariffData;
import org.espalier.cost.TariffItem;
import org.espalier.cost.Tax;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;
import org.jspecify.annotations.Nullable;

/** A price from a day on. What was typed stays until it can be taken. */
final class TariffForm extends Composite<Div> {

    private static final int CODE_LENGTH = 3;

    private final Select<TariffItem> item = new Select<>();
    private final BigDecimalField price = new BigDecimalField(Texts.text("cost.the-price"));
    private final TextField currency = new TextField(Texts.text("cost.currency"));
    private final Select<Tax> tax = new Select<>();
    private final DateEntryField from;
    private final TextField payer = new TextField(Texts.text("cost.payer"));
    private final TextField source = new TextField(Texts.text("cost.source"));
    private final transient Consumer<TariffData> set;

    TariffForm(LocalDate today, Optional<Currency> usual, Consumer<TariffData> set) {
        this.set = set;
        from = new DateEntryField(Texts.text("cost.valid-from"), () -> today);
        item.setLabel(Texts.text("cost.item"));
        item.setItems(TariffItem.values());
        item.setItemLabelGenerator(Texts::of);
        item.setValue(TariffItem.VISIT);
        item.addValueChangeListener(
                change -> currency.setVisible(!change.getValue().isShare()));
        price.setHelperText(Texts.text("cost.the-price.help"));
        currency.setMaxLength(CODE_LENGTH);
        currency.setValue(usual.map(Currency::getCurrencyCode).orElse(""));
        tax.setLabel(Texts.text("cost.tax"));
        tax.setItems(Tax.values());
        tax.setItemLabelGenerator(Texts::of);
        tax.setValue(Tax.EXCLUDED);
        payer.setMaxLength(TariffData.PAYER_LENGTH);
        payer.setHelperText(Texts.text("cost.payer.help"));
        source.setMaxLength(TariffData.SOURCE_LENGTH);
        source.setHelperText(Texts.text("cost.source.help"));
        var button = new Button(Texts.text("cost.set"), click -> set());
        button.addThemeVariants(ButtonVariant.PRIMARY);
        var fields = new Div(item, price, currency, tax, from, payer, source);
        fields.addClassName("form-fields");
        getContent().add(fields, button);
    }

    private void set() {
        boolean share = item.getValue().isShare();
        var unit = currency();
        wrong(price, !isPrice(price.getValue(), share), "cost.the-price.wrong");
        currency.setErrorMessage(Texts.text("cost.currency.wrong"));
        currency.setInvalid(!share && unit.isEmpty());
        from.setErrorMessage(Texts.text("cost.valid-from.missing"));
        from.setInvalid(from.getValue() == null);
        source.setErrorMessage(Texts.text("cost.source.missing"));
        source.setInvalid(source.getValue().strip().length() < TariffData.LEAST_SOURCE);
        var day = from.getValue();
        if (day != null && !price.isInvalid() && !currency.isInvalid() && !source.isInvalid()) {
            set.accept(new TariffData(
                    item.getValue(),
                    payer.getValue(),
                    price.getValue(),
                    share ? null : unit.orElseThrow(),
                    tax.getValue(),
                    day,
                    source.getValue()));
        }
    }

    private static void wrong(BigDecimalField field, boolean wrong, String key) {
        field.setErrorMessage(Texts.text(key));
        field.setInvalid(wrong);
    }

    private static boolean isPrice(@Nullable BigDecimal typed, boolean share) {
        return typed != null && TariffData.isPrice(typed, share);
    }

    private Optional<Currency> currency() {
        return Currency.getAvailableCurrencies().stream()
                .filter(one -> one.getDefaultFractionDigits() >= 0)
                .filter(one -> one.getCurrencyCode()
                        .equalsIgnoreCase(currency.getValue().strip()))
                .findFirst();
    }
}
