package org.espalier.prognosis.ui;

import org.espalier.kit.Texts;
import org.espalier.prognosis.LengthOutlook;
import org.espalier.science.growth.DifferenceAtMaturity;
import org.espalier.science.growth.LengthAtMaturity;
import org.espalier.science.quantity.Length;

/** Leg lengths and their difference in words. */
final class LengthText {

    private LengthText() {}

    /** @param difference right less left */
    static String difference(Length difference, Length halfWidth) {
        double millimetres = difference.millimetres();
        return Texts.text(
                millimetres >= 0 ? "prognosis.right-longer" : "prognosis.left-longer",
                Math.abs(millimetres),
                halfWidth.millimetres());
    }

    /** A difference at maturity with the way it is reckoned by. */
    static String difference(LengthOutlook.AtMaturity way, DifferenceAtMaturity.Expected expected) {
        return Texts.text(
                "prognosis.by-way",
                difference(expected.difference(), expected.halfWidth95()),
                PrognosisText.method(way.method()));
    }

    /** Both bones of a leg when they have grown. */
    static String grown(LengthOutlook.AtMaturity way, LengthOutlook.Bones bones) {
        var both = Texts.text("prognosis.grown", grown(bones.femur()), grown(bones.tibia()));
        return Texts.text("prognosis.by-way", both, PrognosisText.method(way.method()));
    }

    private static String grown(LengthAtMaturity bone) {
        return Texts.text(
                "prognosis.grown.bone",
                bone.length().millimetres(),
                bone.low().millimetres(),
                bone.high().millimetres());
    }
}
