package org.espalier.demo.drawn;

import java.util.List;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * The angles and lengths one leg is to be drawn with.
 *
 * <p>Angles are named and signed as everywhere in Espalier: mLDFA, LDTA and LPFA lateral, mMPTA medial, JLCA positive
 * when it opens laterally, metaphyseal angle positive in varus.
 *
 * @param shaftLean between the anatomic and the mechanical axis of the femur
 * @param kneeOffset plateau midpoint against condyle midpoint, positive with the tibia lateral
 * @param metaphysealAngle tibial beak line against the perpendicular to the shaft
 * @param femur hip centre to condyle midpoint
 * @param tibia plateau midpoint to ankle centre
 */
public record DrawnLimb(
        Side side,
        Angle mLDFA,
        Angle mMPTA,
        Angle jlca,
        Angle ldta,
        Angle lpfa,
        Angle shaftLean,
        Length kneeOffset,
        Angle metaphysealAngle,
        Length femur,
        Length tibia,
        List<DrawnPlate> plates) {

    public DrawnLimb {
        plates = List.copyOf(plates);
    }

    /** A straight leg of the size usual at that age. */
    public static DrawnLimb straight(Side side, BodyProportions body) {
        return new DrawnLimb(
                side,
                new Angle(88),
                new Angle(87),
                new Angle(1),
                new Angle(89),
                new Angle(90),
                new Angle(6),
                new Length(0.5),
                new Angle(5),
                new Length(body.femurMm()),
                new Length(body.tibiaMm()),
                List.of());
    }

    /** The same leg with other angles at the knee; the metaphysis of the tibia leans with its plateau. */
    public DrawnLimb withKnee(Angle mLDFA, Angle mMPTA, Angle jlca) {
        Angle lean = new Angle(Math.max(0, 92 - mMPTA.degrees()));
        return new DrawnLimb(side, mLDFA, mMPTA, jlca, ldta, lpfa, shaftLean, kneeOffset, lean, femur, tibia, plates);
    }

    /** The same leg with a measured beak of the tibia. */
    public DrawnLimb withMetaphysealAngle(Angle angle) {
        return new DrawnLimb(side, mLDFA, mMPTA, jlca, ldta, lpfa, shaftLean, kneeOffset, angle, femur, tibia, plates);
    }

    /** The same leg with other lengths. */
    public DrawnLimb withLengths(Length femur, Length tibia) {
        return new DrawnLimb(
                side, mLDFA, mMPTA, jlca, ldta, lpfa, shaftLean, kneeOffset, metaphysealAngle, femur, tibia, plates);
    }

    /** The same leg with plates. */
    public DrawnLimb withPlates(List<DrawnPlate> plates) {
        return new DrawnLimb(
                side, mLDFA, mMPTA, jlca, ldta, lpfa, shaftLean, kneeOffset, metaphysealAngle, femur, tibia, plates);
    }

    /** Deviation of the tibial from the femoral mechanical axis that these angles add up to, positive in varus. */
    public Angle hipKneeAnkle() {
        return new Angle(mLDFA.degrees() - mMPTA.degrees() + jlca.degrees());
    }
}
