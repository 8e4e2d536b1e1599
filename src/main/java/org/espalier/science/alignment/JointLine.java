package org.espalier.science.alignment;

import static org.espalier.science.alignment.Landmark.*;

/** A line across the limb, from its medial to its lateral end. */
public enum JointLine {
    /** From the hip centre to the tip of the trochanter. */
    TROCHANTER(HIP_CENTRE, TROCHANTER_TIP),
    /** Between the corners of the distal femoral metaphysis. */
    FEMUR_BEAKS(FEMUR_BEAK_MEDIAL, FEMUR_BEAK_LATERAL),
    /** Along the distal femoral physis. */
    FEMUR_PHYSIS(FEMUR_PHYSIS_MEDIAL, FEMUR_PHYSIS_LATERAL),
    /** Across the femoral condyles. */
    CONDYLES(CONDYLE_MEDIAL, CONDYLE_LATERAL),
    /** Along the tibial plateau. */
    PLATEAU(PLATEAU_MEDIAL, PLATEAU_LATERAL),
    /** Along the proximal tibial physis. */
    TIBIA_PHYSIS(TIBIA_PHYSIS_MEDIAL, TIBIA_PHYSIS_LATERAL),
    /** Between the corners of the proximal tibial metaphysis. */
    TIBIA_BEAKS(BEAK_MEDIAL, BEAK_LATERAL),
    /** Along the tibial plafond. */
    PLAFOND(PLAFOND_MEDIAL, PLAFOND_LATERAL);

    private final Landmark medial;
    private final Landmark lateral;

    JointLine(Landmark medial, Landmark lateral) {
        this.medial = medial;
        this.lateral = lateral;
    }

    /** Its medial end. */
    public Landmark medial() {
        return medial;
    }

    /** Its lateral end. */
    public Landmark lateral() {
        return lateral;
    }
}
