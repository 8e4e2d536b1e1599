package org.espalier.plan;

import java.util.Optional;
import org.espalier.patient.Bone;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.alignment.LimbNumbers;
import org.espalier.science.planning.BoneLine;
import org.espalier.science.planning.CutKind;
import org.espalier.science.planning.Dome;
import org.espalier.science.planning.HingeCorrection;
import org.espalier.science.planning.LegAxis;
import org.espalier.science.planning.LimbPoint;
import org.espalier.science.planning.MovedLimb;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PixelPoint;

/**
 * A limb on a film, cut and turned, measured before and after.
 *
 * @param outwards by how much what lies below the hinge swings outwards (corrects varus), − inwards
 */
record FilmCut(FilmLimb limb, CutKind kind, PixelPoint from, PixelPoint to, PixelPoint hinge, Angle outwards) {

    private static final double LEAST_OFF_THE_CUT = 0.15;

    FilmCut {
        if (Math.abs(to.x() - from.x()) < 1) {
            throw new CutRefusedException(CutRefusedException.Reason.ALONG_THE_BONE);
        }
        if (kind == CutKind.ROUND && offTheCut(limb, from, to, hinge) < LEAST_OFF_THE_CUT) {
            throw new CutRefusedException(CutRefusedException.Reason.CENTRE_ON_THE_CUT);
        }
    }

    /** How far the hinge lies beside the line of the cut, in lengths of it. */
    private static double offTheCut(FilmLimb limb, PixelPoint from, PixelPoint to, PixelPoint hinge) {
        var a = limb.at(from);
        var b = limb.at(to);
        return Math.abs(new BoneLine(a, b).beside(limb.at(hinge))) / a.distanceTo(b);
    }

    MovedLimb moved() {
        return new MovedLimb(kind, from, to, hinge, clockwise());
    }

    LimbLandmarks landmarks() {
        return limb.landmarks();
    }

    LimbLandmarks after() {
        return moved().apply(limb.landmarks(), limb.plane());
    }

    LimbNumbers numbersBefore() {
        return limb.numbers();
    }

    LimbNumbers numbersAfter() {
        return limb.numbers(after());
    }

    /** The femur when the cut lies above the middle of the knee. */
    Bone bone() {
        double level = middleOfCut().proximal();
        return limb.knee().map(LimbPoint::proximal).filter(knee -> level > knee).isPresent() ? Bone.FEMUR : Bone.TIBIA;
    }

    /**
     * The turn about this hinge that brings the line from hip to ankle through the middle of the knee. A cut of the
     * femur takes the knee along; seen from below, the hip turns the other way.
     */
    Optional<Angle> throughTheKnee() {
        return limb.at(Landmark.HIP_CENTRE).flatMap(hip -> limb.knee().flatMap(knee -> limb.ankle()
                .flatMap(ankle -> bone() == Bone.FEMUR
                        ? LegAxis.correction(ankle, hip, limb.at(hinge), knee)
                                .map(turn -> Angle.ofDegrees(-turn.degrees()))
                        : LegAxis.correction(hip, ankle, limb.at(hinge), knee))));
    }

    /** The axes of the bone that is cut; empty without the marks of its shaft. */
    Optional<FilmBend> bend() {
        return FilmBend.of(limb, bone());
    }

    /** What correcting the whole bend about this hinge does to the axes. */
    Optional<HingeCorrection> correction() {
        return bend().map(bend -> new HingeCorrection(bend.proximal(), bend.distal(), limb.at(hinge)));
    }

    /** From the hinge to the farther end of the cut; empty where lengths are not told. */
    Optional<Length> width() {
        double far = Math.max(
                limb.at(hinge).distanceTo(limb.at(from)), limb.at(hinge).distanceTo(limb.at(to)));
        return told(far);
    }

    /** From the hinge to the line of the cut, or to the arc of a round one. */
    Length hingeToCut() {
        return new Length(
                kind == CutKind.ROUND
                        ? moved().radius(limb.plane())
                        : Math.abs(new BoneLine(limb.at(from), limb.at(to)).beside(limb.at(hinge))));
    }

    /** The arc of a round cut; empty for a straight one, and where lengths are not told. */
    Optional<Dome> dome() {
        return kind == CutKind.ROUND
                ? told(limb.at(from).distanceTo(limb.at(to)))
                        .map(width -> new Dome(new Length(moved().radius(limb.plane())), width))
                : Optional.empty();
    }

    LimbPoint middleOfCut() {
        var a = limb.at(from);
        var b = limb.at(to);
        return new LimbPoint((a.lateral() + b.lateral()) / 2, (a.proximal() + b.proximal()) / 2);
    }

    private Optional<Length> told(double millimetres) {
        return limb.inMillimetres() && millimetres > 0 ? Optional.of(new Length(millimetres)) : Optional.empty();
    }

    /** Clockwise as seen on the film swings what is below to the left. */
    private Angle clockwise() {
        return Angle.ofDegrees(-limb.lateralSign() * outwards.degrees());
    }
}
