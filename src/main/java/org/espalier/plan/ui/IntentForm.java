package org.espalier.plan.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.plan.Intent;
import org.espalier.plan.Option;
import org.espalier.plan.OptionOutlook;
import org.espalier.plan.Options;
import org.espalier.platform.FormDraft;
import org.espalier.science.quantity.Angle;
import org.jspecify.annotations.Nullable;

/** Asks what the surgeon means and expects, and keeps it with the options; nothing is chosen beforehand. */
class IntentForm extends Composite<Section> {

    private enum Direction {
        VARUS,
        VALGUS
    }

    private static final double FURTHEST = 30;

    /** What stands in the fields; empty where nothing does. */
    record Typed(String meant, String aim, String expectation, String hka, String direction, String by) {}

    private final transient Options options;
    private final transient FormDraft<Typed> draft;
    private final Paragraph found = PageParts.paragraph("soon", "");
    private final Select<Option> meant = new Select<>();
    private final TextArea aim = text("plan.intent.aim");
    private final TextArea expectation = text("plan.intent.expectation");
    private final NumberField hka = new NumberField(Texts.text("plan.intent.hka"));
    private final RadioButtonGroup<Direction> direction = new RadioButtonGroup<>(Texts.text("plan.intent.direction"));
    private final DateEntryField by;
    private boolean complete;

    /** @param draft what is typed, kept at every change until it is said */
    IntentForm(Options options, FormDraft<Typed> draft, Consumer<Optional<Intent>> keep) {
        this.options = options;
        this.draft = draft;
        by = new DateEntryField(
                Texts.text("plan.intent.by"), () -> options.ahead().today());
        meant.setLabel(Texts.text("plan.intent.meant"));
        meant.setItems(options.open().stream().map(OptionOutlook::option).toList());
        meant.setItemLabelGenerator(Texts::of);
        direction.setItems(List.of(Direction.values()));
        direction.setItemLabelGenerator(
                one -> Texts.text(one == Direction.VARUS ? "kit.Deformity.VARUS" : "kit.Deformity.VALGUS"));
        hka.setMin(0);
        hka.setMax(FURTHEST);
        var both = new Button(Texts.text("plan.intent.keep"), click -> save(keep));
        both.addThemeVariants(ButtonVariant.PRIMARY);
        var alone = new Button(Texts.text("plan.intent.keep-only"), click -> keep.accept(Optional.empty()));
        var fields = new Div(meant, aim, expectation, hka, direction, by);
        fields.addClassName("form-fields");
        var actions = new Div(both, alone);
        actions.addClassName("actions");
        getContent().addClassName("plan-intent");
        getContent()
                .add(
                        new H2(Texts.text("plan.intent.heading")),
                        PageParts.paragraph("note", Texts.text("plan.intent.note")),
                        found,
                        fields,
                        actions);
        draft.typed().ifPresent(this::fill);
        keepAtEveryChange();
    }

    private void keepAtEveryChange() {
        aim.setValueChangeMode(ValueChangeMode.LAZY);
        expectation.setValueChangeMode(ValueChangeMode.LAZY);
        Stream.<HasValue<?, ?>>of(meant, aim, expectation, hka, direction)
                .forEach(field -> field.addValueChangeListener(change -> keepTyped()));
        by.addTypingListener(this::keepTyped);
    }

    private void keepTyped() {
        boolean kept = draft.keep(new Typed(
                name(meant.getValue()),
                aim.getValue(),
                expectation.getValue(),
                hka.getValue() == null ? "" : hka.getValue().toString(),
                name(direction.getValue()),
                by.typed()));
        found.setText(kept ? "" : Texts.text("plan.intent.elsewhere"));
    }

    private static String name(@Nullable Enum<?> chosen) {
        return chosen == null ? "" : chosen.name();
    }

    private void fill(Typed typed) {
        options.open().stream()
                .map(OptionOutlook::option)
                .filter(option -> option.name().equals(typed.meant()))
                .forEach(meant::setValue);
        aim.setValue(typed.aim());
        expectation.setValue(typed.expectation());
        if (!typed.hka().isEmpty()) {
            hka.setValue(Double.valueOf(typed.hka()));
        }
        Stream.of(Direction.values())
                .filter(one -> one.name().equals(typed.direction()))
                .forEach(direction::setValue);
        by.type(typed.by());
        found.setText(Texts.text("plan.intent.found"));
    }

    private void save(Consumer<Optional<Intent>> keep) {
        complete = true;
        var degrees = hka.getValue();
        demand(meant, meant.getValue() != null, "plan.intent.meant.missing");
        demand(aim, Intent.isSaid(aim.getValue()), "plan.intent.text.missing");
        demand(expectation, Intent.isSaid(expectation.getValue()), "plan.intent.text.missing");
        demand(hka, degrees == null || degrees >= 0 && degrees <= FURTHEST, "plan.intent.hka.range");
        boolean turned = degrees != null && degrees != 0;
        demand(direction, !turned || direction.getValue() != null, "plan.intent.direction.missing");
        demandDay(degrees);
        if (complete) {
            keep.accept(Optional.of(new Intent(
                    meant.getValue(), aim.getValue(), expectation.getValue(), angle(degrees), by.getValue())));
        }
    }

    private void demandDay(@Nullable Double degrees) {
        var day = by.getValue();
        if (day == null) {
            demand(by, degrees == null, "plan.intent.by.missing");
        } else {
            demand(by, day.isAfter(options.ahead().today()), "plan.intent.by.past");
        }
    }

    private @Nullable Angle angle(@Nullable Double degrees) {
        return degrees == null ? null : new Angle(direction.getValue() == Direction.VALGUS ? -degrees : degrees);
    }

    private void demand(HasValidation field, boolean given, String text) {
        field.setInvalid(!given);
        field.setErrorMessage(Texts.text(text));
        complete &= given;
    }

    private static TextArea text(String label) {
        var text = new TextArea(Texts.text(label));
        text.setMaxLength(Intent.LENGTH);
        return text;
    }
}
