package org.espalier.stock.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.access.Site;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Length;
import org.espalier.stock.Need;
import org.espalier.stock.ProductKind;
import org.espalier.stock.Reservation;
import org.espalier.stock.ReservationService;
import org.jspecify.annotations.Nullable;

/** Keeps a range of sizes, a driver or a rescue set for an operation on a day. */
final class ReservationForm extends Composite<Div> {

    private final StockPage page;
    private final transient ReservationService reservations;
    private final Site here;
    private final LocalDate today;
    private final DateEntryField on;
    private final Select<ProductKind> kind = new Select<>();
    private final NumberField diameter = new NumberField(Texts.text("stock.diameter-label"));
    private final NumberField shortest = new NumberField(Texts.text("stock.shortest"));
    private final NumberField longest = new NumberField(Texts.text("stock.longest"));
    private final TextField driver = new TextField(Texts.text("stock.driver-label"));
    private final IntegerField quantity = new IntegerField(Texts.text("stock.pieces"));
    private final UUID id = UUID.randomUUID();

    ReservationForm(StockPage page, ReservationService reservations, Site here, LocalDate today) {
        this.page = page;
        this.reservations = reservations;
        this.here = here;
        this.today = today;
        on = new DateEntryField(Texts.text("stock.operation-on"), () -> today);
        on.setErrorMessage(Texts.text("stock.day.missing"));
        kind.setLabel(Texts.text("stock.kind"));
        kind.setItems(ProductKind.values());
        kind.setItemLabelGenerator(Texts::of);
        kind.setValue(ProductKind.SCREW);
        quantity.setValue(1);
        quantity.setMin(1);
        quantity.setErrorMessage(Texts.text("stock.pieces.missing"));
        longest.setErrorMessage(Texts.text("stock.range.wrong"));
        var fields = new Div(on, kind, diameter, shortest, longest, driver, quantity);
        fields.addClassName("form-fields");
        getContent().add(fields, new Button(Texts.text("stock.reserve-now"), click -> reserve()));
    }

    private void reserve() {
        var day = on.getValue();
        on.setInvalid(day == null || day.isBefore(today));
        quantity.setInvalid(quantity.getValue() == null || quantity.getValue() < 1);
        longest.setInvalid(!isRange(shortest.getValue(), longest.getValue()));
        if (day != null && !on.isInvalid() && !quantity.isInvalid() && !longest.isInvalid()) {
            var reservation = new Reservation(id, here.id(), id, day, List.of(need()));
            page.act(() -> reservations.reserve(reservation), "stock.reserved");
        }
    }

    private static boolean isRange(@Nullable Double shortest, @Nullable Double longest) {
        return shortest == null && longest == null
                || shortest != null && longest != null && shortest > 0 && shortest <= longest;
    }

    private Need need() {
        return new Need(
                kind.getValue(),
                null,
                length(diameter),
                length(shortest),
                length(longest),
                driver.getValue().isBlank() ? null : driver.getValue().strip(),
                quantity.getValue());
    }

    private static @Nullable Length length(NumberField field) {
        return field.getValue() == null ? null : Length.ofMillimetres(field.getValue());
    }
}
