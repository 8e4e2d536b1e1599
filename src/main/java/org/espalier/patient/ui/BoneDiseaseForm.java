package org.espalier.patient.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.patient.BoneDisease;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;

/** Since when a disease of bone is under control, or is not. */
final class BoneDiseaseForm extends FindingForm<BoneDisease> {

    private final Select<BoneDisease.Control> control = new Select<>();
    private final TextField note = new TextField(Texts.text("patient.note"));

    BoneDiseaseForm(LocalDate birth, LocalDate today, Ids ids, FormDraft<TypedFinding> draft) {
        super(BoneDisease.class, birth, today, ids, draft);
        labelDay("patient.bone-disease.since");
        control.setLabel(Texts.text("patient.bone-disease.control"));
        control.setItems(BoneDisease.Control.values());
        control.setItemLabelGenerator(Texts::of);
        note.setMaxLength(BoneDisease.NOTE_LENGTH);
        add(control);
        add(note);
        binder().forField(control)
                .withValidator(Objects::nonNull, Texts.text("patient.bone-disease.control.missing"))
                .bind("control");
        binder().forField(note).withNullRepresentation("").bind("note");
        remember("control", control, BoneDisease.Control.class);
        remember("note", note);
        goOn();
    }

    @Override
    void fill(BoneDisease disease) {
        control.setValue(disease.control());
        note.setValue(disease.note() == null ? "" : disease.note());
    }

    @Override
    Optional<String> problem() {
        return Optional.empty();
    }
}
