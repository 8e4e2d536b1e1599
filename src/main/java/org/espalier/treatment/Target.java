package org.espalier.treatment;

import java.time.LocalDate;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * The angle a physis is guided to, or the deviation a limb is: explicit, signed, reasoned. A planned overshoot is a
 * target like any other.
 *
 * @param bone null for the whole limb; its end likewise
 * @param angle of a physis: the joint angle beside it (mLDFA, mMPTA, LDTA), 60° to 130°; of a limb: its deviation from
 *     straight, positive in varus, −30° to 30°
 * @param because why this angle
 */
public record Target(
        LocalDate on,
        Side side,
        @Nullable Bone bone,
        @Nullable BoneEnd end,
        Angle angle,
        String because) implements TreatmentFact {

    private static final Angle KNEE = new Angle(87);
    private static final Angle ANKLE = new Angle(89);
    private static final double LEAST_JOINT = 60;
    private static final double GREATEST_JOINT = 130;
    private static final double FURTHEST_LIMB = 30;

    public Target {
        if ((bone == null) != (end == null)) {
            throw new IllegalArgumentException("A physis has a bone and an end: " + bone + ", " + end);
        }
        double degrees = angle.degrees();
        boolean possible =
                bone == null ? Math.abs(degrees) <= FURTHEST_LIMB : degrees >= LEAST_JOINT && degrees <= GREATEST_JOINT;
        if (!possible) {
            throw new IllegalArgumentException("No limb is guided to " + angle);
        }
        because = Written.required(because, REMARK_LENGTH);
    }

    public static Target of(LocalDate on, PhysisKey physis, Angle angle, String because) {
        return new Target(on, physis.side(), physis.bone(), physis.end(), angle, because);
    }

    public static Target ofLimb(LocalDate on, Side side, Angle deviation, String because) {
        return new Target(on, side, null, null, deviation, because);
    }

    /** What a physis is guided to while nobody signed another: 87° at the knee, 89° at the ankle. */
    public static Angle byDefault(PhysisKey physis) {
        return physis.bone() == Bone.TIBIA && physis.end() == BoneEnd.DISTAL ? ANKLE : KNEE;
    }

    boolean isOf(PhysisKey physis) {
        return side == physis.side() && bone == physis.bone() && end == physis.end();
    }

    boolean isOfLimb(Side limb) {
        return side == limb && bone == null;
    }
}
