package org.espalier.science.growth;

import org.espalier.science.quantity.PrintedTable;

/**
 * A growth plate of femur or tibia, with its share in the growth that is left.
 *
 * <p>Source: Paley and others, J Bone Joint Surg Am 2000;82-A:1432 (of the bone, from memory); textbook convention (of
 * the leg). Error: the true share of the knee's plates rises from little over half at 7 years to nine tenths at the
 * end.
 */
public enum GrowthPlate {
    /** Upper end of the femur. */
    PROXIMAL_FEMUR(LengthForAge.Bone.FEMUR),
    /** Lower end of the femur. */
    DISTAL_FEMUR(LengthForAge.Bone.FEMUR),
    /** Upper end of the tibia. */
    PROXIMAL_TIBIA(LengthForAge.Bone.TIBIA),
    /** Lower end of the tibia. */
    DISTAL_TIBIA(LengthForAge.Bone.TIBIA);

    private final LengthForAge.Bone bone;
    private final double shareOfBone;
    private final double shareOfLeg;

    GrowthPlate(LengthForAge.Bone bone) {
        this.bone = bone;
        PrintedTable.Row row = PrintedTable.of(GrowthPlate.class, "growth-shares.csv").rows().stream()
                .filter(each -> each.text("plate").equals(name()))
                .findFirst()
                .orElseThrow();
        this.shareOfBone = row.number("of_bone");
        this.shareOfLeg = row.number("of_leg");
    }

    /** The bone it lengthens. */
    public LengthForAge.Bone bone() {
        return bone;
    }

    /** Its share in the growth of its bone, above 0 and below 1. */
    public double shareOfBone() {
        return shareOfBone;
    }

    /** Its share in the growth of the leg, above 0 and below 1. */
    public double shareOfLeg() {
        return shareOfLeg;
    }
}
