package org.espalier.science.forecast;

/** Why a limb is bent, as far as rates, non-response and failure of hardware are known to differ by it. */
public enum Cause {
    /** Idiopathic valgus; also the best guess where nothing is known. */
    IDIOPATHIC_VALGUS,
    /** Idiopathic varus. */
    IDIOPATHIC_VARUS,
    /** Tibia vara beginning in infancy. */
    INFANTILE_TIBIA_VARA,
    /** Tibia vara beginning late. */
    LATE_ONSET_TIBIA_VARA,
    /** Skeletal dysplasia. */
    SKELETAL_DYSPLASIA,
    /** Rickets of any kind. */
    RICKETS
}
