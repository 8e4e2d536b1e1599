package org.espalier.patient.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.BoneAge;
import org.espalier.patient.BoneAgeMethod;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;
import org.espalier.science.growth.BoneAgeSign;
import org.espalier.science.quantity.Sex;

/** Bone age with the method it was read by. */
final class BoneAgeForm extends FindingForm<BoneAge> {

    private static final int OLDEST_YEARS = 20;

    private final AgeFields age = new AgeFields("patient.bone-age", OLDEST_YEARS);
    private final Select<BoneAgeMethod> method = new Select<>();
    private final Div signs = new Div();
    private final TextField reader = new TextField(Texts.text("patient.reader"));

    BoneAgeForm(LocalDate birth, LocalDate today, Ids ids, FormDraft<TypedFinding> draft) {
        super(BoneAge.class, birth, today, ids, draft);
        labelDay("patient.film-day");
        method.setLabel(Texts.text("patient.method"));
        method.setItems(BoneAgeMethod.values());
        method.setItemLabelGenerator(Texts::of);
        add(age);
        add(method);
        add(signs);
        method.addValueChangeListener(change -> showSigns());
        reader.setMaxLength(BoneAge.NAME_LENGTH);
        reader.setHelperText(Texts.text("patient.reader.help"));
        add(reader);
        remember("years", age.years());
        remember("months", age.months());
        remember("method", method, BoneAgeMethod.class);
        binder().forField(age)
                .withValidator(age.readable())
                .withValidator(Objects::nonNull, Texts.text("patient.bone-age.missing"))
                .bind("age");
        binder().forField(method)
                .withValidator(Objects::nonNull, Texts.text("patient.method.missing"))
                .bind("method");
        remember("reader", reader);
        binder().forField(reader).withNullRepresentation("").bind("reader");
        goOn();
    }

    /** Where single signs tell the age, which ones and at what age. */
    private void showSigns() {
        signs.removeAll();
        part().ifPresent(part -> {
            var list = new UnorderedList();
            BoneAgeSign.of(part).stream()
                    .map(BoneAgeForm::line)
                    .map(ListItem::new)
                    .forEach(list::add);
            signs.add(new Paragraph(Texts.text("patient.bone-age.signs")), list);
        });
    }

    private Optional<BoneAgeSign.Part> part() {
        return Optional.ofNullable(method.getValue()).flatMap(chosen -> switch (chosen) {
            case ELBOW -> Optional.of(BoneAgeSign.Part.OLECRANON);
            case HAND_SHORTHAND -> Optional.of(BoneAgeSign.Part.HAND);
            case HAND_ATLAS, HAND_SCORED, KNEE_SCORED, KNEE_CENTRAL_PEAK -> Optional.empty();
        });
    }

    private static String line(BoneAgeSign sign) {
        return Texts.text(
                "patient.bone-age.sign",
                Texts.text("patient.bone-age.sign." + sign.name()),
                age(sign, Sex.FEMALE),
                age(sign, Sex.MALE));
    }

    private static String age(BoneAgeSign sign, Sex sex) {
        return sign.age(sex).map(DateText::of).orElseGet(() -> Texts.text("patient.bone-age.sign.none"));
    }

    @Override
    void fill(BoneAge boneAge) {
        age.setValue(boneAge.age());
        method.setValue(boneAge.method());
        reader.setValue(boneAge.reader() == null ? "" : boneAge.reader());
    }

    @Override
    Optional<String> problem() {
        return Optional.empty();
    }
}
