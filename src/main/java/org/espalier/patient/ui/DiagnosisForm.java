package org.espalier.patient.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.DiagnosisKind;
import org.espalier.patient.Onset;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;

/** A diagnosis with side and onset. */
final class DiagnosisForm extends FindingForm<Diagnosis> {

    private static final int OLDEST_YEARS = 20;

    private final Select<DiagnosisKind> kind = new Select<>();
    private final Select<AffectedSides> sides = new Select<>();
    private final Select<Onset> onset = new Select<>();
    private final AgeFields onsetAge = new AgeFields("patient.onset-age", OLDEST_YEARS);
    private final TextField note = new TextField(Texts.text("patient.note"));

    DiagnosisForm(LocalDate birth, LocalDate today, Ids ids, FormDraft<TypedFinding> draft) {
        super(Diagnosis.class, birth, today, ids, draft);
        setUpFields();
        bindFields();
        remember("kind", kind, DiagnosisKind.class);
        remember("sides", sides, AffectedSides.class);
        remember("onset", onset, Onset.class);
        remember("onsetYears", onsetAge.years());
        remember("onsetMonths", onsetAge.months());
        remember("note", note);
        goOn();
    }

    @Override
    void fill(Diagnosis diagnosis) {
        kind.setValue(diagnosis.kind());
        sides.setValue(diagnosis.sides());
        onset.setValue(diagnosis.onset());
        onsetAge.setValue(diagnosis.onsetAge());
        note.setValue(diagnosis.note() == null ? "" : diagnosis.note());
    }

    @Override
    Optional<String> problem() {
        boolean contradicts =
                !onset.isEmpty() && !onsetAge.isEmpty() && !onset.getValue().includes(onsetAge.getValue());
        return contradicts ? Optional.of(Texts.text("patient.onset.contradiction")) : Optional.empty();
    }

    private void setUpFields() {
        kind.setLabel(Texts.text("patient.diagnosis"));
        kind.setItems(DiagnosisKind.values());
        kind.setItemLabelGenerator(Texts::of);
        sides.setLabel(Texts.text("patient.sides"));
        sides.setItems(AffectedSides.values());
        sides.setItemLabelGenerator(Texts::of);
        onset.setLabel(Texts.text("patient.onset"));
        onset.setItems(Onset.values());
        onset.setItemLabelGenerator(one -> one == null ? Texts.text("kit.not-known") : Texts.of(one));
        onset.setEmptySelectionAllowed(true);
        onset.setEmptySelectionCaption(Texts.text("kit.not-known"));
        onset.setVisible(false);
        kind.addValueChangeListener(change -> {
            onset.setVisible(change.getValue() != null && change.getValue().hasOnset());
            if (!onset.isVisible()) {
                onset.clear();
            }
        });
        note.setMaxLength(Diagnosis.NOTE_LENGTH);
        add(kind);
        add(sides);
        add(onset);
        add(onsetAge);
        add(note);
    }

    private void bindFields() {
        binder().forField(kind)
                .withValidator(Objects::nonNull, Texts.text("patient.diagnosis.missing"))
                .bind("kind");
        binder().forField(sides)
                .withValidator(Objects::nonNull, Texts.text("patient.sides.missing"))
                .bind("sides");
        binder().forField(onset).bind("onset");
        binder().forField(onsetAge).withValidator(onsetAge.readable()).bind("onsetAge");
        binder().forField(note)
                .withValidator(
                        text -> kind.getValue() != DiagnosisKind.OTHER || !text.isBlank(),
                        Texts.text("patient.note.missing"))
                .withNullRepresentation("")
                .bind("note");
    }
}
