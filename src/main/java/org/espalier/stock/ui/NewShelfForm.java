package org.espalier.stock.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import org.espalier.access.Site;
import org.espalier.kit.Texts;
import org.espalier.stock.ShelfData;
import org.espalier.stock.ShelfKind;
import org.espalier.stock.StockService;

/** Puts up a store, a tray or a consignment shelf. */
final class NewShelfForm extends Composite<Div> {

    NewShelfForm(StockPage page, StockService stock, Site here) {
        var kind = new Select<ShelfKind>();
        kind.setLabel(Texts.text("stock.kind"));
        kind.setItems(ShelfKind.STORE, ShelfKind.TRAY, ShelfKind.CONSIGNMENT);
        kind.setItemLabelGenerator(Texts::of);
        kind.setValue(ShelfKind.STORE);
        var name = new TextField(Texts.text("stock.name"));
        name.setMaxLength(80);
        name.setErrorMessage(Texts.text("stock.name.missing"));
        var owner = new TextField(Texts.text("stock.owner-label"));
        owner.setMaxLength(120);
        var put = new Button(Texts.text("stock.put-up"), click -> {
            name.setInvalid(name.getValue().isBlank());
            if (!name.isInvalid()) {
                var lender =
                        owner.getValue().isBlank() ? null : owner.getValue().strip();
                page.act(
                        () -> stock.addShelf(here.id(), new ShelfData(kind.getValue(), name.getValue(), lender, null)),
                        "stock.done");
            }
        });
        var fields = new Div(kind, name, owner);
        fields.addClassName("form-fields");
        getContent().add(fields, put);
    }
}
