package org.espalier.patient.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.patient.BoneAge;
import org.espalier.patient.BoneAgeMethod;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;

/** Bone age with the method it was read by. */
final class BoneAgeForm extends FindingForm<BoneAge> {

    private static final int OLDEST_YEARS = 20;

    private final AgeFields age = new AgeFields("patient.bone-age", OLDEST_YEARS);
    private final Select<BoneAgeMethod> method = new Select<>();
    private final TextField reader = new TextField(Texts.text("patient.reader"));

    BoneAgeForm(LocalDate birth, LocalDate today, Ids ids, FormDraft<TypedFinding> draft) {
        super(BoneAge.class, birth, today, ids, draft);
        labelDay("patient.film-day");
        method.setLabel(Texts.text("patient.method"));
        method.setItems(BoneAgeMethod.values());
        method.setItemLabelGenerator(Texts::of);
        add(age);
        add(method);
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
