package org.espalier.cost;

import java.util.Optional;
import org.espalier.patient.DiagnosisKind;

/** Diagnoses in groups large enough to be counted without telling who. */
public enum DiagnosisGroup {
    PHYSIOLOGICAL,
    IDIOPATHIC,
    TIBIA_VARA,
    RICKETS,
    DYSPLASIA,
    AFTER_INJURY,
    OTHER,
    NOT_SAID;

    public static DiagnosisGroup of(Optional<DiagnosisKind> kind) {
        return kind.map(DiagnosisGroup::of).orElse(NOT_SAID);
    }

    private static DiagnosisGroup of(DiagnosisKind kind) {
        return switch (kind) {
            case PHYSIOLOGICAL_BOW, PHYSIOLOGICAL_KNOCK_KNEE -> PHYSIOLOGICAL;
            case IDIOPATHIC_VALGUS, IDIOPATHIC_VARUS -> IDIOPATHIC;
            case TIBIA_VARA -> TIBIA_VARA;
            case RICKETS_NUTRITIONAL, RICKETS_HYPOPHOSPHATAEMIC, RICKETS_OTHER, RENAL -> RICKETS;
            case SKELETAL_DYSPLASIA, EXOSTOSES, FIBULAR_DEFICIENCY, FOCAL_FIBROCARTILAGINOUS_DYSPLASIA -> DYSPLASIA;
            case VALGUS_AFTER_METAPHYSEAL_FRACTURE, PARTIAL_GROWTH_ARREST, BONY_BAR, FIBROCARTILAGINOUS_BAR ->
                AFTER_INJURY;
            case NEUROMUSCULAR, OTHER -> OTHER;
        };
    }
}
