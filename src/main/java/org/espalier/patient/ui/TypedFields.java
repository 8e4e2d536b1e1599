package org.espalier.patient.ui;

import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.select.Select;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The fields of a form by name, each as the text that stands in it, so that a draft can keep and put back all of them.
 */
final class TypedFields {

    private record Field(Supplier<String> get, Consumer<String> set) {}

    private final Map<String, Field> fields = new LinkedHashMap<>();
    private final Runnable changed;

    /** @param changed told of every change by the reader */
    TypedFields(Runnable changed) {
        this.changed = changed;
    }

    /** A text that has no field of its own, or one that tells of its changes by itself. */
    void add(String name, Supplier<String> get, Consumer<String> set) {
        fields.put(name, new Field(get, set));
    }

    /** A field with a text for what stands in it. */
    void add(String name, HasValue<?, ?> field, Supplier<String> get, Consumer<String> set) {
        add(name, get, set);
        field.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                changed.run();
            }
        });
    }

    /** A choice; one of an earlier version that is no more reads as none. */
    <E extends Enum<E>> void add(String name, Select<E> field, Class<E> type) {
        add(
                name,
                field,
                () -> field.isEmpty() ? "" : field.getValue().name(),
                text -> field.setValue(Arrays.stream(type.getEnumConstants())
                        .filter(choice -> choice.name().equals(text))
                        .findFirst()
                        .orElse(null)));
    }

    Map<String, String> texts() {
        var typed = new LinkedHashMap<String, String>();
        fields.forEach((name, field) -> typed.put(name, field.get().get()));
        return typed;
    }

    /** Puts texts back; a field that has none is emptied. */
    void setTexts(Map<String, String> texts) {
        fields.forEach((name, field) -> field.set().accept(Objects.requireNonNullElse(texts.get(name), "")));
    }
}
