package org.espalier.stock.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.Site;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;
import org.espalier.stock.Arrival;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Label;
import org.espalier.stock.LabelService;
import org.espalier.stock.Product;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfKind;
import org.espalier.stock.StockService;
import org.espalier.stock.UnitCost;

/** What came from a supplier: label, lot, last day of use, how many, what one cost, and where it is laid. */
final class ArrivalForm extends Composite<Div> {

    private final StockPage page;
    private final transient StockService stock;
    private final ProductPick pick;
    private final TextField lot = new TextField(Texts.text("stock.lot"));
    private final DateEntryField expires;
    private final IntegerField quantity = new IntegerField(Texts.text("stock.pieces"));
    private final BigDecimalField cost = new BigDecimalField(Texts.text("stock.unit-cost"));
    private final TextField currency = new TextField(Texts.text("stock.currency"));
    private final Select<Shelf> onto = new Select<>();
    private UUID movement = UUID.randomUUID();

    ArrivalForm(
            StockPage page,
            StockService stock,
            CatalogueService catalogue,
            LabelService labels,
            Site here,
            LocalDate today) {
        this.page = page;
        this.stock = stock;
        pick = new ProductPick(catalogue, labels, this::take, this::forget);
        expires = new DateEntryField(Texts.text("stock.expires"), () -> today);
        lot.setMaxLength(40);
        quantity.setMin(1);
        quantity.setErrorMessage(Texts.text("stock.pieces.missing"));
        currency.setMaxLength(3);
        currency.setErrorMessage(Texts.text("stock.currency.wrong"));
        onto.setLabel(Texts.text("stock.onto"));
        onto.setItems(stock.shelves(here.id()).stream()
                .filter(shelf -> shelf.closedOn() == null)
                .filter(shelf -> ShelfKind.SUPPLIER.mayPassTo(shelf.kind()))
                .toList());
        onto.setItemLabelGenerator(StockText::of);
        onto.setErrorMessage(Texts.text("stock.shelf.missing"));
        onto.getListDataView().getItems().findFirst().ifPresent(onto::setValue);
        var take = new Button(Texts.text("stock.take-in"), click -> take());
        take.addThemeVariants(ButtonVariant.PRIMARY);
        var fields = new Div(lot, expires, quantity, cost, currency, onto);
        fields.addClassName("form-fields");
        getContent().add(pick, fields, take);
    }

    private void take(Label label) {
        label.lot().ifPresent(lot::setValue);
        label.expires().ifPresent(expires::setValue);
    }

    /** A photo is of a whole label, so nothing of the label before may stand beside it. */
    private void forget() {
        lot.clear();
        expires.type("");
    }

    private void take() {
        boolean counted = quantity.getValue() != null && quantity.getValue() > 0;
        quantity.setInvalid(!counted);
        onto.setInvalid(onto.isEmpty());
        currency.setInvalid(cost.getValue() != null && currency().isEmpty());
        pick.wanted()
                .filter(product -> counted && !onto.isEmpty() && !currency.isInvalid())
                .ifPresent(product -> page.act(() -> stock.receive(arrival(product)), "stock.taken-in"));
    }

    private Arrival arrival(Product product) {
        return new Arrival(
                movement,
                product.id(),
                Optional.of(lot.getValue()),
                Optional.ofNullable(expires.getValue()),
                quantity.getValue(),
                onto.getValue().id(),
                currency().filter(unit -> cost.getValue() != null).map(unit -> new UnitCost(cost.getValue(), unit)));
    }

    private Optional<Currency> currency() {
        return Currency.getAvailableCurrencies().stream()
                .filter(one -> one.getCurrencyCode()
                        .equalsIgnoreCase(currency.getValue().strip()))
                .findFirst();
    }
}
