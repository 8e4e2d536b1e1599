package org.espalier.demo;

import java.time.LocalDate;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.DiagnosisKind;
import org.espalier.patient.Onset;
import org.jspecify.annotations.Nullable;

/** What the invented children have. */
enum DemoDiagnosis {
    PHYSIOLOGICAL_BOW(DiagnosisKind.PHYSIOLOGICAL_BOW, AffectedSides.BOTH, null),
    INFANTILE_TIBIA_VARA(DiagnosisKind.TIBIA_VARA, AffectedSides.BOTH, Onset.INFANTILE),
    PHYSIOLOGICAL_KNOCK_KNEE(DiagnosisKind.PHYSIOLOGICAL_KNOCK_KNEE, AffectedSides.BOTH, null),
    JUVENILE_TIBIA_VARA(DiagnosisKind.TIBIA_VARA, AffectedSides.BOTH, Onset.JUVENILE),
    FIBROCARTILAGINOUS_DYSPLASIA(DiagnosisKind.FOCAL_FIBROCARTILAGINOUS_DYSPLASIA, AffectedSides.LEFT, null),
    IDIOPATHIC_VALGUS(DiagnosisKind.IDIOPATHIC_VALGUS, AffectedSides.BOTH, null),
    IDIOPATHIC_VARUS(DiagnosisKind.IDIOPATHIC_VARUS, AffectedSides.BOTH, null),
    LATE_ONSET_TIBIA_VARA(DiagnosisKind.TIBIA_VARA, AffectedSides.RIGHT, Onset.ADOLESCENT),
    SKELETAL_DYSPLASIA(DiagnosisKind.SKELETAL_DYSPLASIA, AffectedSides.BOTH, null),
    VALGUS_AFTER_FRACTURE(DiagnosisKind.VALGUS_AFTER_METAPHYSEAL_FRACTURE, AffectedSides.RIGHT, null),
    RICKETS(DiagnosisKind.RICKETS_HYPOPHOSPHATAEMIC, AffectedSides.BOTH, null),
    RICKETS_NUTRITIONAL(DiagnosisKind.RICKETS_NUTRITIONAL, AffectedSides.BOTH, null),
    PARTIAL_GROWTH_ARREST(DiagnosisKind.PARTIAL_GROWTH_ARREST, AffectedSides.LEFT, null),
    BONY_BAR(DiagnosisKind.BONY_BAR, AffectedSides.RIGHT, null),
    FIBROCARTILAGINOUS_BAR(DiagnosisKind.FIBROCARTILAGINOUS_BAR, AffectedSides.LEFT, null),
    FIBULAR_DEFICIENCY(DiagnosisKind.FIBULAR_DEFICIENCY, AffectedSides.LEFT, null),
    EXOSTOSES(DiagnosisKind.EXOSTOSES, AffectedSides.RIGHT, null),
    NEUROMUSCULAR(DiagnosisKind.NEUROMUSCULAR, AffectedSides.BOTH, null),
    RENAL(DiagnosisKind.RENAL, AffectedSides.BOTH, null);

    private final DiagnosisKind kind;
    private final AffectedSides sides;
    private final @Nullable Onset onset;

    DemoDiagnosis(DiagnosisKind kind, AffectedSides sides, @Nullable Onset onset) {
        this.kind = kind;
        this.sides = sides;
        this.onset = onset;
    }

    Diagnosis on(LocalDate day) {
        return new Diagnosis(day, kind, sides, onset, null, null);
    }

    boolean isTibiaVara() {
        return kind == DiagnosisKind.TIBIA_VARA;
    }
}
