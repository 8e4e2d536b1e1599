package org.espalier.demo;

/** What the invented children have. */
enum DemoDiagnosis {
    PHYSIOLOGICAL_BOW,
    INFANTILE_TIBIA_VARA,
    IDIOPATHIC_VALGUS,
    LATE_ONSET_TIBIA_VARA,
    SKELETAL_DYSPLASIA,
    VALGUS_AFTER_FRACTURE,
    RICKETS,
    PARTIAL_GROWTH_ARREST
}
