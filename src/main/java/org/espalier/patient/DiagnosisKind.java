package org.espalier.patient;

/** Why a limb is bowed or knock-kneed. */
public enum DiagnosisKind {
    PHYSIOLOGICAL_BOW,
    PHYSIOLOGICAL_KNOCK_KNEE,
    /** With its onset, early or late, by a named scheme. */
    TIBIA_VARA,
    IDIOPATHIC_VALGUS,
    IDIOPATHIC_VARUS,
    VALGUS_AFTER_METAPHYSEAL_FRACTURE,
    FOCAL_FIBROCARTILAGINOUS_DYSPLASIA,
    PARTIAL_GROWTH_ARREST,
    BONY_BAR,
    FIBROCARTILAGINOUS_BAR,
    SKELETAL_DYSPLASIA,
    RICKETS_NUTRITIONAL,
    RICKETS_HYPOPHOSPHATAEMIC,
    RICKETS_OTHER,
    FIBULAR_DEFICIENCY,
    EXOSTOSES,
    NEUROMUSCULAR,
    RENAL,
    /** Said in the note. */
    OTHER;

    /** Whether the onset is part of the diagnosis. */
    public boolean hasOnset() {
        return this == TIBIA_VARA;
    }
}
