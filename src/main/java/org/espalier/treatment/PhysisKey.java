package org.espalier.treatment;

import java.util.List;
import java.util.stream.Stream;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.Physis;
import org.espalier.science.quantity.Side;

/** A growth plate of a child by its place: what is followed, tethered and released. */
public record PhysisKey(Side side, Bone bone, BoneEnd end) {

    /** Those that bear most on the knee, by which a limb is guided as a rule. */
    public static List<PhysisKey> ofKnee(Side side) {
        return List.of(
                new PhysisKey(side, Bone.FEMUR, BoneEnd.DISTAL), new PhysisKey(side, Bone.TIBIA, BoneEnd.PROXIMAL));
    }

    /** All that a procedure can be about on one side, from above down. */
    public static List<PhysisKey> all(Side side) {
        return Stream.of(Bone.values())
                .flatMap(bone -> Stream.of(BoneEnd.values()).map(end -> new PhysisKey(side, bone, end)))
                .toList();
    }

    public static PhysisKey of(Physis physis) {
        return new PhysisKey(physis.side(), physis.bone(), physis.end());
    }
}
