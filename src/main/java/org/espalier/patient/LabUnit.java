package org.espalier.patient;

/** The unit a laboratory reported in. A value keeps it and is never converted. */
public enum LabUnit {
    NMOL_PER_L,
    NG_PER_ML,
    U_PER_L,
    UKAT_PER_L,
    MMOL_PER_L,
    MG_PER_DL,
    PMOL_PER_L,
    PG_PER_ML,
    NG_PER_L
}
