package org.espalier.stock.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.Optional;
import java.util.function.Consumer;
import org.espalier.kit.Texts;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Label;
import org.espalier.stock.LabelService;
import org.espalier.stock.Product;

/** A product by its label, which a scanner types and ends with Enter, or by its name. */
final class ProductPick extends Composite<Div> {

    private final TextField scan = new TextField(Texts.text("stock.scan"));
    private final ComboBox<Product> product = new ComboBox<>(Texts.text("stock.product"));

    /**
     * @param scanned takes what else a label says
     * @param another forgets what another label said
     */
    ProductPick(CatalogueService catalogue, LabelService labels, Consumer<Label> scanned, Runnable another) {
        scan.setHelperText(Texts.text("stock.scan.help"));
        scan.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        scan.setAutoselect(true);
        scan.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                scan.setInvalid(false);
                if (!change.getValue().isBlank()) {
                    take(labels.read(change.getValue()), scanned);
                }
            }
        });
        product.setItems(query -> catalogue.search(query.getFilter().orElse(""), Optional.empty()).stream()
                .skip(query.getOffset())
                .limit(query.getLimit()));
        product.setItemLabelGenerator(one -> StockText.of(one) + sized(StockText.size(one.data())));
        product.setErrorMessage(Texts.text("stock.product.missing"));
        var photo = new LabelPhotoUpload(labels, label -> {
            scan.clear();
            product.clear();
            another.run();
            take(label, scanned);
        });
        getContent().addClassName("form-fields");
        getContent().add(scan, photo, product);
    }

    private static String sized(String size) {
        return size.isEmpty() ? "" : " · " + size;
    }

    private void take(Label label, Consumer<Label> scanned) {
        label.product().ifPresent(product::setValue);
        boolean unknown = label.code().isPresent() && label.product().isEmpty();
        if (unknown) {
            product.clear();
        }
        scan.setInvalid(unknown || label.problem().isPresent());
        scan.setErrorMessage(label.problem().orElseGet(() -> Texts.text("stock.scan.not-in-catalogue")));
        scanned.accept(label);
    }

    void onChange(Runnable listener) {
        product.addValueChangeListener(change -> listener.run());
    }

    Optional<Product> value() {
        return product.getOptionalValue();
    }

    /** The product, or empty with the field marked. */
    Optional<Product> wanted() {
        product.setInvalid(product.isEmpty());
        return value();
    }

    void clear() {
        scan.clear();
        scan.focus();
    }
}
