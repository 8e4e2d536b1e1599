package org.espalier.prognosis;

import java.util.Optional;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.growth.GrowthPlate;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;

/** A physis in the words of each science that speaks of it. */
final class Plates {

    private Plates() {}

    /** Of those that are forecast, at the knee. */
    static Optional<PhysisSite> site(PhysisKey physis) {
        if (physis.bone() == Bone.FEMUR && physis.end() == BoneEnd.DISTAL) {
            return Optional.of(PhysisSite.DISTAL_FEMUR);
        }
        return physis.bone() == Bone.TIBIA && physis.end() == BoneEnd.PROXIMAL
                ? Optional.of(PhysisSite.PROXIMAL_TIBIA)
                : Optional.empty();
    }

    /** Of those of femur and tibia. */
    static Optional<GrowthPlate> plate(PhysisKey physis) {
        return switch (physis.bone()) {
            case FEMUR ->
                Optional.of(physis.end() == BoneEnd.DISTAL ? GrowthPlate.DISTAL_FEMUR : GrowthPlate.PROXIMAL_FEMUR);
            case TIBIA ->
                Optional.of(physis.end() == BoneEnd.DISTAL ? GrowthPlate.DISTAL_TIBIA : GrowthPlate.PROXIMAL_TIBIA);
            case FIBULA -> Optional.empty();
        };
    }

    /** What a tether on a side of the bone corrects; empty for one that turns it in no frontal plane. */
    static Optional<Deformity> corrects(PlateSide side) {
        return switch (side) {
            case LATERAL -> Optional.of(Deformity.VARUS);
            case MEDIAL -> Optional.of(Deformity.VALGUS);
            case ANTERIOR, POSTERIOR -> Optional.empty();
        };
    }

    /** The joint angle a site of the knee turns. */
    static Quantity angle(PhysisSite site) {
        return switch (site) {
            case DISTAL_FEMUR -> Quantity.MLDFA;
            case PROXIMAL_TIBIA -> Quantity.MMPTA;
        };
    }

    static Quantity width(PhysisSite site) {
        return switch (site) {
            case DISTAL_FEMUR -> Quantity.FEMUR_PHYSIS_WIDTH;
            case PROXIMAL_TIBIA -> Quantity.TIBIA_PHYSIS_WIDTH;
        };
    }

    /** The length of the bone a plate lengthens. */
    static Quantity length(GrowthPlate plate) {
        return switch (plate) {
            case PROXIMAL_FEMUR, DISTAL_FEMUR -> Quantity.FEMUR_LENGTH;
            case PROXIMAL_TIBIA, DISTAL_TIBIA -> Quantity.TIBIA_LENGTH;
        };
    }
}
