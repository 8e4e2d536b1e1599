package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.NumberField;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.espalier.kit.Texts;
import org.espalier.plan.SheetInputs;

/** What is typed into a sheet; nothing is filled in beforehand but what the address holds. */
class InputsForm extends Composite<Div> {

    private final SheetInputs given;
    private final Map<String, Supplier<String>> values = new LinkedHashMap<>();
    private final Map<String, NumberField> numbers = new LinkedHashMap<>();
    private final Div fields = new Div();

    InputsForm(SheetInputs given, Consumer<Map<String, String>> reckon) {
        this.given = given;
        fields.addClassName("form-fields");
        var button = new Button(Texts.text("plan.reckon"), click -> reckon.accept(typed()));
        button.addThemeVariants(ButtonVariant.PRIMARY);
        getContent().addClassName("plan-inputs");
        getContent().add(fields, button);
    }

    /** Asks for a number; one outside its limits is marked and counts as not given. */
    InputsForm number(String name, double least, double most) {
        var field = new NumberField(Texts.text("plan.input." + name));
        field.setMin(least);
        field.setMax(most);
        field.setErrorMessage(Texts.text("plan.input.range", least, most));
        given.number(name, least, most).ifPresent(field::setValue);
        numbers.put(name, field);
        values.put(
                name,
                () -> Optional.ofNullable(field.getValue()).map(String::valueOf).orElse(""));
        return with(field);
    }

    <E extends Enum<E>> InputsForm choice(String name, Class<E> type) {
        var field = new Select<E>();
        field.setLabel(Texts.text("plan.input." + name));
        field.setItems(type.getEnumConstants());
        field.setEmptySelectionAllowed(true);
        field.setEmptySelectionCaption(Texts.text("plan.input.not-said"));
        field.setItemLabelGenerator(one -> one == null ? Texts.text("plan.input.not-said") : label(name, one));
        given.choice(name, type).ifPresent(field::setValue);
        values.put(
                name,
                () -> Optional.ofNullable(field.getValue()).map(Enum::name).orElse(""));
        return with(field);
    }

    /** Asks for one of a list. */
    <T> InputsForm oneOf(String name, List<T> items, Function<T, String> code, Function<T, String> words) {
        var field = new Select<T>();
        field.setLabel(Texts.text("plan.input." + name));
        field.setItems(items);
        field.setEmptySelectionAllowed(true);
        field.setEmptySelectionCaption(Texts.text("plan.input.not-said"));
        field.setItemLabelGenerator(one -> one == null ? Texts.text("plan.input.not-said") : words.apply(one));
        field.addClassName("plan-wide");
        given.text(name)
                .flatMap(text -> items.stream()
                        .filter(one -> code.apply(one).equals(text))
                        .findFirst())
                .ifPresent(field::setValue);
        values.put(name, () -> Optional.ofNullable(field.getValue()).map(code).orElse(""));
        return with(field);
    }

    /** Puts a number into its field, as if it were typed. */
    void type(String name, double value) {
        Objects.requireNonNull(numbers.get(name), name).setValue(value);
    }

    Map<String, String> typed() {
        var typed = new LinkedHashMap<String, String>();
        values.forEach((name, value) -> {
            if (!value.get().isEmpty()) {
                typed.put(name, value.get());
            }
        });
        return typed;
    }

    private static String label(String name, Enum<?> constant) {
        return Texts.text("plan.input." + name + "." + constant.name());
    }

    private InputsForm with(Component field) {
        fields.add(field);
        return this;
    }
}
