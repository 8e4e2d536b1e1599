package org.espalier.reading;

import static org.espalier.science.alignment.Landmark.*;

import org.espalier.science.alignment.Landmark;

/** A line across the limb, from its medial to its lateral end. */
enum JointLine {
    TROCHANTER(HIP_CENTRE, TROCHANTER_TIP),
    FEMUR_BEAKS(FEMUR_BEAK_MEDIAL, FEMUR_BEAK_LATERAL),
    FEMUR_PHYSIS(FEMUR_PHYSIS_MEDIAL, FEMUR_PHYSIS_LATERAL),
    CONDYLES(CONDYLE_MEDIAL, CONDYLE_LATERAL),
    PLATEAU(PLATEAU_MEDIAL, PLATEAU_LATERAL),
    TIBIA_PHYSIS(TIBIA_PHYSIS_MEDIAL, TIBIA_PHYSIS_LATERAL),
    TIBIA_BEAKS(BEAK_MEDIAL, BEAK_LATERAL),
    PLAFOND(PLAFOND_MEDIAL, PLAFOND_LATERAL);

    private final Landmark medial;
    private final Landmark lateral;

    JointLine(Landmark medial, Landmark lateral) {
        this.medial = medial;
        this.lateral = lateral;
    }

    Landmark medial() {
        return medial;
    }

    Landmark lateral() {
        return lateral;
    }
}
