package org.espalier.demo.drawn;

import org.espalier.science.quantity.Angle;

/**
 * A two-hole plate with its two screws across a physis of the knee.
 *
 * @param divergence between the two screws, 0 to 60 degrees, opening away from the plate
 */
public record DrawnPlate(Bone bone, Face face, Angle divergence) {

    /** Which physis it spans: the distal femur or the proximal tibia. */
    public enum Bone {
        FEMUR,
        TIBIA
    }

    /** Which side of the knee it lies on. */
    public enum Face {
        MEDIAL,
        LATERAL
    }

    public DrawnPlate {
        if (divergence.degrees() < 0 || divergence.degrees() > 60) {
            throw new IllegalArgumentException("screws diverge by 0 to 60 degrees: " + divergence.degrees());
        }
    }
}
