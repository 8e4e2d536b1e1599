package org.espalier.demo;

import java.util.List;
import org.espalier.demo.drawn.DrawnPlate;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/** What is true of one leg on the day of a film. */
record DemoKnee(Angle mLDFA, Angle mMPTA, Angle jlca, Length femurLonger, Length tibiaLonger, List<DrawnPlate> plates) {

    static DemoKnee of(double mLDFA, double mMPTA, double jlca) {
        return new DemoKnee(
                new Angle(mLDFA), new Angle(mMPTA), new Angle(jlca), new Length(0), new Length(0), List.of());
    }

    /** The same knee with plates in place. */
    DemoKnee with(DrawnPlate... plates) {
        return new DemoKnee(mLDFA, mMPTA, jlca, femurLonger, tibiaLonger, List.of(plates));
    }

    /** The same knee in a leg that outgrew, or fell behind, what is usual at that age. */
    DemoKnee grown(double femurMm, double tibiaMm) {
        return new DemoKnee(mLDFA, mMPTA, jlca, new Length(femurMm), new Length(tibiaMm), plates);
    }

    /** A plate on the inner side of the femur, screws so many degrees apart: against valgus. */
    static DrawnPlate innerFemur(double degrees) {
        return new DrawnPlate(DrawnPlate.Bone.FEMUR, DrawnPlate.Face.MEDIAL, new Angle(degrees));
    }

    /** A plate on the outer side of the femur: against varus. */
    static DrawnPlate outerFemur(double degrees) {
        return new DrawnPlate(DrawnPlate.Bone.FEMUR, DrawnPlate.Face.LATERAL, new Angle(degrees));
    }

    /** A plate on the outer side of the tibia: against varus. */
    static DrawnPlate outerTibia(double degrees) {
        return new DrawnPlate(DrawnPlate.Bone.TIBIA, DrawnPlate.Face.LATERAL, new Angle(degrees));
    }
}
