package org.espalier.followup.ui;

import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextFieldBase;
import com.vaadin.flow.component.timepicker.TimePicker;
import com.vaadin.flow.data.value.HasValueChangeMode;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;
import org.espalier.platform.Drafts;
import org.espalier.platform.FormDraft;

/**
 * The fields of a small form, what is typed into them kept at every change: a dropped line, an ended session or a
 * restart loses nothing. What was typed before is there when the form is opened again, and it is said that it is not
 * written down.
 */
final class KeptFields {

    /** What stands in the fields, by their names. */
    record Typed(Map<String, String> fields) {}

    private record Place(Supplier<String> get, Consumer<String> set) {}

    private final transient FormDraft<Typed> draft;
    private final Map<String, Place> places = new LinkedHashMap<>();
    private final Paragraph said = new Paragraph();

    /**
     * @param kind which form
     * @param subject what it is about
     */
    KeptFields(Drafts drafts, String kind, UUID subject) {
        draft = new FormDraft<>(drafts, kind, subject, Typed.class);
        said.addClassName("soon");
        said.getElement().setAttribute("role", "status");
    }

    /** Where it is said that what was typed before is here again. */
    Paragraph said() {
        return said;
    }

    /** What was typed before; nothing before anything was. */
    Map<String, String> before() {
        return draft.typed().map(Typed::fields).orElse(Map.of());
    }

    KeptFields text(String name, TextFieldBase<?, String> field) {
        keepWhileTyping(field);
        field.addValueChangeListener(this::keepTyped);
        return place(name, field::getValue, field::setValue);
    }

    KeptFields number(String name, NumberField field) {
        keepWhileTyping(field);
        field.addValueChangeListener(this::keepTyped);
        return place(
                name,
                () -> field.getValue() == null ? "" : field.getValue().toString(),
                text -> field.setValue(text.isEmpty() ? null : Double.valueOf(text)));
    }

    KeptFields day(String name, DateEntryField field) {
        field.addTypingListener(this::keep);
        return place(name, field::typed, field::type);
    }

    KeptFields time(String name, TimePicker field) {
        field.addValueChangeListener(this::keepTyped);
        return place(
                name,
                () -> field.getValue() == null ? "" : field.getValue().toString(),
                text -> field.setValue(text.isEmpty() ? null : LocalTime.parse(text)));
    }

    KeptFields yes(String name, Checkbox field) {
        field.addValueChangeListener(this::keepTyped);
        return place(name, () -> field.getValue().toString(), text -> field.setValue(Boolean.valueOf(text)));
    }

    KeptFields word(String name, ComboBox<String> field) {
        field.addValueChangeListener(this::keepTyped);
        return place(name, () -> field.getValue() == null ? "" : field.getValue(), field::setValue);
    }

    /** What may be chosen no more is not brought back. */
    <E extends Enum<E>> KeptFields choice(String name, Select<E> field, Class<E> type) {
        field.addValueChangeListener(this::keepTyped);
        return place(
                name, () -> field.getValue() == null ? "" : field.getValue().name(), text -> {
                    if (!text.isEmpty() && field.getListDataView().contains(Enum.valueOf(type, text))) {
                        field.setValue(Enum.valueOf(type, text));
                    }
                });
    }

    /** Something that stands in no field but belongs to what is typed. */
    KeptFields place(String name, Supplier<String> get, Consumer<String> set) {
        places.put(name, new Place(get, set));
        return this;
    }

    /** Forgets places that are there no more. */
    void without(Predicate<String> gone) {
        places.keySet().removeIf(gone);
    }

    /** Brings back what was typed before, once all fields are named. */
    void goOn() {
        var before = before();
        if (before.isEmpty()) {
            return;
        }
        places.forEach((name, place) -> {
            var text = before.get(name);
            if (text != null) {
                place.set().accept(text);
            }
        });
        said.setText(Texts.text("followup.draft.found"));
    }

    /** Keeps what stands in the fields now. */
    void keep() {
        Map<String, String> fields = new LinkedHashMap<>();
        places.forEach((name, place) -> fields.put(name, place.get().get()));
        said.setText(draft.keep(new Typed(fields)) ? "" : Texts.text("followup.draft.elsewhere"));
    }

    /** Forgets it: it is written down. */
    void discard() {
        draft.discard();
        said.setText("");
    }

    private void keepTyped(HasValue.ValueChangeEvent<?> change) {
        if (change.isFromClient()) {
            keep();
        }
    }

    private static void keepWhileTyping(HasValueChangeMode field) {
        field.setValueChangeMode(ValueChangeMode.LAZY);
    }
}
