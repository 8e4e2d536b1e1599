package org.espalier.stock.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfData;
import org.espalier.stock.ShelfKind;

/**
 * Puts up a store, a tray or a consignment shelf, or changes what is said of one; what was lent says by when it goes
 * back.
 */
final class ShelfForm extends Composite<Div> {

    private final Select<ShelfKind> kind = new Select<>();
    private final TextField name = new TextField(Texts.text("stock.name"));
    private final TextField owner = new TextField(Texts.text("stock.owner-label"));
    private final DateEntryField back;

    /** @param shelf what is to be changed; empty to put one up */
    ShelfForm(Optional<Shelf> shelf, LocalDate today, Consumer<ShelfData> given) {
        back = new DateEntryField(Texts.text("stock.back-by"), () -> today);
        back.setErrorMessage(Texts.text("stock.back-by.whose"));
        kind.setLabel(Texts.text("stock.kind"));
        kind.setItems(ShelfKind.STORE, ShelfKind.TRAY, ShelfKind.CONSIGNMENT);
        kind.setItemLabelGenerator(Texts::of);
        kind.setValue(ShelfKind.STORE);
        kind.setVisible(shelf.isEmpty());
        name.setMaxLength(80);
        name.setErrorMessage(Texts.text("stock.name.missing"));
        owner.setMaxLength(120);
        shelf.ifPresent(this::show);
        var fields = new Div(kind, name, owner, back);
        fields.addClassName("form-fields");
        var key = shelf.isPresent() ? "stock.save" : "stock.put-up";
        getContent().add(fields, new Button(Texts.text(key), click -> give(given)));
    }

    private void show(Shelf shelf) {
        kind.setValue(shelf.kind());
        name.setValue(shelf.name() == null ? "" : shelf.name());
        owner.setValue(shelf.owner() == null ? "" : shelf.owner());
        var day = shelf.backBy();
        if (day != null) {
            back.type(DateText.typed(day));
        }
    }

    private void give(Consumer<ShelfData> given) {
        var lender = owner.getValue().isBlank() ? null : owner.getValue().strip();
        name.setInvalid(name.getValue().isBlank());
        back.setInvalid(!back.typed().isBlank() && (back.getValue() == null || lender == null));
        if (!name.isInvalid() && !back.isInvalid()) {
            given.accept(new ShelfData(kind.getValue(), name.getValue(), lender, back.getValue()));
        }
    }
}
