package org.espalier.plan;

import java.util.Optional;
import org.espalier.patient.Bone;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.planning.BoneLine;
import org.espalier.science.planning.LimbPoint;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * The two axes of a bone on its film: one as its shaft runs, the other as it should stand on the joint, at 87 degrees
 * to it.
 *
 * <p>A tibia's shaft line is its axis. A femur's axis leaves its hip centre at an angle to the shaft: that of the other
 * limb where its joint angle is within 85 to 90 degrees and its shaft is marked, else the mean of adults.
 *
 * @param proximal axis of the upper part
 * @param distal axis of the lower part
 * @param basis what the axes rest on
 */
record FilmBend(Bone bone, BoneLine proximal, BoneLine distal, Basis basis, Angle shaftAngle) {

    /** What the axes rest on. */
    enum Basis {
        /** The shaft of the tibia as marked. */
        TIBIAL_SHAFT(0),
        /** The shaft of the femur and the angle between axis and shaft of the other limb; its doubt is judged. */
        OTHER_FEMUR(1),
        /**
         * The shaft of the femur and the mean of adults (5.4, J Orthop Surg Res 2017;12:77); 2 degrees of doubt, from
         * memory.
         */
        MEAN_FEMUR(2);

        private final Angle doubt;

        Basis(double doubtDegrees) {
            doubt = Angle.ofDegrees(doubtDegrees);
        }
    }

    private static final Angle JOINT_LINE = Angle.ofDegrees(87);
    private static final Angle MEAN = Angle.ofDegrees(5.4);
    private static final double LEAST_NORMAL = 85;
    private static final double MOST_NORMAL = 90;

    /** Standard error of an axis across its length, judged from readers' errors. */
    private static final double LINE_ERROR = 1.5;

    /** Empty without the marks it takes. */
    static Optional<FilmBend> of(FilmLimb limb, Bone bone) {
        return bone == Bone.FEMUR ? femur(limb) : tibia(limb);
    }

    private static Optional<FilmBend> tibia(FilmLimb limb) {
        return shaft(limb, Landmark.TIBIA_SHAFT_PROXIMAL, Landmark.TIBIA_SHAFT_DISTAL)
                .flatMap(shaft -> limb.shin().flatMap(middle -> limb.at(Landmark.PLATEAU_MEDIAL)
                        .map(medial -> new FilmBend(
                                Bone.TIBIA,
                                new BoneLine(middle, medial.turnedAbout(middle, JOINT_LINE)),
                                shaft,
                                Basis.TIBIAL_SHAFT,
                                Angle.ZERO))));
    }

    private static Optional<FilmBend> femur(FilmLimb limb) {
        return shaft(limb, Landmark.FEMUR_SHAFT_PROXIMAL, Landmark.FEMUR_SHAFT_DISTAL)
                .flatMap(shaft -> limb.at(Landmark.HIP_CENTRE)
                        .flatMap(hip -> limb.knee().flatMap(middle -> limb.at(Landmark.CONDYLE_LATERAL)
                                .map(lateral -> femur(limb, shaft, hip, middle, lateral)))));
    }

    private static FilmBend femur(FilmLimb limb, BoneLine shaft, LimbPoint hip, LimbPoint middle, LimbPoint lateral) {
        var ofOther = ofOther(limb);
        var angle = ofOther.orElse(MEAN);
        var along = new LimbPoint(
                hip.lateral() + shaft.lower().lateral() - shaft.upper().lateral(),
                hip.proximal() + shaft.lower().proximal() - shaft.upper().proximal());
        return new FilmBend(
                Bone.FEMUR,
                new BoneLine(hip, along.turnedAbout(hip, angle)),
                new BoneLine(lateral.turnedAbout(middle, JOINT_LINE), middle),
                ofOther.isPresent() ? Basis.OTHER_FEMUR : Basis.MEAN_FEMUR,
                angle);
    }

    private static Optional<Angle> ofOther(FilmLimb limb) {
        var numbers = limb.numbersOfOther();
        return numbers.angle(Quantity.MLDFA)
                .filter(joint -> joint.degrees() >= LEAST_NORMAL && joint.degrees() <= MOST_NORMAL)
                .flatMap(_ -> numbers.angle(Quantity.AMA));
    }

    private static Optional<BoneLine> shaft(FilmLimb limb, Landmark upper, Landmark lower) {
        return limb.at(upper)
                .flatMap(above ->
                        limb.at(lower).filter(below -> !below.equals(above)).map(below -> new BoneLine(above, below)));
    }

    /** How far the lower part must swing outwards to be straight: + for varus, − for valgus. */
    Angle varus() {
        return Angle.ofDegrees(-proximal.towardsLateral(distal).degrees());
    }

    /** Where the axes cross; empty under five degrees, where the level wanders. */
    Optional<LimbPoint> centre() {
        return varus().abs().compareTo(BoneLine.LEAST_FOR_LEVEL) < 0 ? Optional.empty() : proximal.crossing(distal);
    }

    /** The standard error of the level of the centre, from that of the lines and of the angle to the shaft. */
    Length levelError(LimbPoint centre) {
        double across = Math.hypot(LINE_ERROR, proximal.upper().distanceTo(centre) * Math.sin(basis.doubt.toRadians()));
        return new Length(BoneLine.levelError(across, varus()));
    }
}
