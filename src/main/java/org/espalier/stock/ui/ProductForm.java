package org.espalier.stock.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Optional;
import java.util.function.Consumer;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Length;
import org.espalier.stock.Build;
import org.espalier.stock.Magnet;
import org.espalier.stock.Material;
import org.espalier.stock.ProductData;
import org.espalier.stock.ProductKind;
import org.jspecify.annotations.Nullable;

/** What the catalogue says of a product. */
final class ProductForm extends Composite<Div> {

    private final Select<ProductKind> kind = select("stock.kind", ProductKind.values());
    private final TextField name = new TextField(Texts.text("stock.name"));
    private final TextField reference = new TextField(Texts.text("stock.reference"));
    private final NumberField diameter = new NumberField(Texts.text("stock.diameter-label"));
    private final NumberField core = new NumberField(Texts.text("stock.core-label"));
    private final NumberField length = new NumberField(Texts.text("stock.length-label"));
    private final Select<Build> build = select("stock.build", Build.values());
    private final Select<Material> material = select("stock.material", Material.values());
    private final TextField driver = new TextField(Texts.text("stock.driver-label"));
    private final Select<Magnet> magnet = select("stock.magnet", Magnet.values());
    private final Checkbox traced = new Checkbox(Texts.text("stock.traced"));
    private final Checkbox sterile = new Checkbox(Texts.text("stock.sterile"));

    ProductForm(Optional<ProductData> shown, Consumer<ProductData> save) {
        kind.setValue(ProductKind.PLATE);
        magnet.setValue(Magnet.NOT_KNOWN);
        build.setEmptySelectionAllowed(true);
        material.setEmptySelectionAllowed(true);
        traced.setValue(true);
        name.setErrorMessage(Texts.text("stock.name.missing"));
        name.setMaxLength(160);
        reference.setErrorMessage(Texts.text("stock.reference.missing"));
        reference.setMaxLength(60);
        core.setErrorMessage(Texts.text("stock.core.wrong"));
        driver.setMaxLength(60);
        shown.ifPresent(this::show);
        var fields = new Div(
                kind, name, reference, diameter, core, length, build, material, driver, magnet, traced, sterile);
        fields.addClassName("form-fields");
        getContent().add(fields, new Button(Texts.text("stock.save"), click -> {
            if (isValid()) {
                save.accept(typed());
            }
        }));
    }

    private static <E extends Enum<E>> Select<E> select(String label, E[] items) {
        var select = new Select<E>();
        select.setLabel(Texts.text(label));
        select.setItems(items);
        select.setItemLabelGenerator(item -> item == null ? Texts.text("stock.not-known") : Texts.of(item));
        return select;
    }

    private void show(ProductData data) {
        kind.setValue(data.kind());
        name.setValue(data.name());
        reference.setValue(data.reference());
        show(diameter, data.diameter());
        show(core, data.core());
        show(length, data.length());
        build.setValue(data.build());
        material.setValue(data.material());
        driver.setValue(data.driver() == null ? "" : data.driver());
        magnet.setValue(data.magnet());
        traced.setValue(data.traced());
        sterile.setValue(data.sterile());
    }

    private static void show(NumberField field, @Nullable Length value) {
        if (value != null) {
            field.setValue(value.millimetres());
        }
    }

    private boolean isValid() {
        boolean named = isValid(name, name.getValue().strip().length() > 1)
                & isValid(reference, !reference.getValue().isBlank());
        return named
                & isValid(diameter, isLength(diameter))
                & isValid(length, isLength(length))
                & isValid(
                        core,
                        isLength(core)
                                && (core.getValue() == null
                                        || diameter.getValue() == null
                                        || core.getValue() <= diameter.getValue()));
    }

    private static boolean isLength(NumberField field) {
        return field.getValue() == null || field.getValue() > 0;
    }

    private static boolean isValid(HasValidation field, boolean valid) {
        field.setInvalid(!valid);
        return valid;
    }

    private ProductData typed() {
        return new ProductData(
                kind.getValue(),
                name.getValue(),
                reference.getValue(),
                length(diameter),
                length(core),
                length(length),
                build.getValue(),
                material.getValue(),
                driver.getValue().isBlank() ? null : driver.getValue().strip(),
                magnet.getValue(),
                traced.getValue(),
                sterile.getValue());
    }

    private static @Nullable Length length(NumberField field) {
        return field.getValue() == null ? null : Length.ofMillimetres(field.getValue());
    }
}
