package org.espalier.plan;

import java.util.Optional;
import org.espalier.science.alignment.AlignmentMeasurement;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.alignment.LimbNumbers;
import org.espalier.science.planning.BoneLine;
import org.espalier.science.planning.HingeCorrection;
import org.espalier.science.planning.LegAxis;
import org.espalier.science.planning.LimbPoint;
import org.espalier.science.planning.MovedLimb;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PlanePoint;
import org.espalier.science.quantity.Side;

/**
 * A limb on a film, cut and turned, measured before and after.
 *
 * @param plane what points are brought to the plane by
 * @param inMillimetres whether lengths are told on this film
 * @param outwards by how much what lies below the hinge swings outwards (corrects varus), − inwards
 */
record FilmCut(
        Side side,
        LimbLandmarks landmarks,
        Calibration plane,
        boolean inMillimetres,
        PixelPoint from,
        PixelPoint to,
        PixelPoint hinge,
        Angle outwards) {

    /** Where a tibia's axis should meet its plateau when the target is the default one. */
    private static final Angle JOINT_LINE = Angle.ofDegrees(87);

    FilmCut {
        if (Math.abs(to.x() - from.x()) < 1) {
            throw new IllegalArgumentException("The cut runs along the film; lay it across the bone");
        }
    }

    MovedLimb moved() {
        return new MovedLimb(from, to, hinge, clockwise());
    }

    LimbLandmarks after() {
        return moved().apply(landmarks, plane);
    }

    LimbNumbers numbersBefore() {
        return AlignmentMeasurement.measure(side, landmarks, plane);
    }

    LimbNumbers numbersAfter() {
        return AlignmentMeasurement.measure(side, after(), plane);
    }

    /** The turn about this hinge that brings the line from hip to ankle through the middle of the knee. */
    Optional<Angle> throughTheKnee() {
        return landmarks.point(Landmark.HIP_CENTRE).flatMap(hip -> middle(
                        landmarks, Landmark.CONDYLE_MEDIAL, Landmark.CONDYLE_LATERAL)
                .flatMap(knee -> middle(landmarks, Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL)
                        .flatMap(ankle -> LegAxis.correction(limb(hip), limb(ankle), limb(hinge), limb(knee)))));
    }

    /** Axis of the tibia as it should leave the plateau, and as its shaft runs; empty without the shaft's points. */
    Optional<HingeCorrection> tibia() {
        return landmarks
                .point(Landmark.TIBIA_SHAFT_PROXIMAL)
                .flatMap(upper -> landmarks.point(Landmark.TIBIA_SHAFT_DISTAL).flatMap(lower -> expected()
                        .map(proximal ->
                                new HingeCorrection(proximal, new BoneLine(limb(upper), limb(lower)), limb(hinge)))));
    }

    private Optional<BoneLine> expected() {
        return landmarks.point(Landmark.PLATEAU_MEDIAL).flatMap(medial -> middle(
                        landmarks, Landmark.PLATEAU_MEDIAL, Landmark.PLATEAU_LATERAL)
                .map(middle -> new BoneLine(limb(middle), limb(medial).turnedAbout(limb(middle), JOINT_LINE))));
    }

    /** From the hinge to the farther end of the cut; empty where lengths are not told. */
    Optional<Length> width() {
        double far = Math.max(limb(hinge).distanceTo(limb(from)), limb(hinge).distanceTo(limb(to)));
        return inMillimetres && far > 0 ? Optional.of(new Length(far)) : Optional.empty();
    }

    /** On the film a place of the limb's own frame. */
    PixelPoint pixel(LimbPoint point) {
        return plane.toPixels(new PlanePoint(lateralSign() * point.lateral(), -point.proximal()));
    }

    static Optional<PixelPoint> middle(LimbLandmarks limb, Landmark one, Landmark other) {
        return limb.point(one)
                .flatMap(a -> limb.point(other).map(b -> new PixelPoint((a.x() + b.x()) / 2, (a.y() + b.y()) / 2)));
    }

    /** Clockwise as seen on the film swings what is below to the left. */
    private Angle clockwise() {
        return Angle.ofDegrees(-lateralSign() * outwards.degrees());
    }

    private LimbPoint limb(PixelPoint point) {
        var place = plane.toPlane(point);
        return new LimbPoint(lateralSign() * place.x(), -place.y());
    }

    /** Which way lateral lies on this film: by the landmarks themselves, so that a mirrored film does no harm. */
    private double lateralSign() {
        return landmarks
                .point(Landmark.PLATEAU_MEDIAL)
                .flatMap(medial ->
                        landmarks.point(Landmark.PLATEAU_LATERAL).map(lateral -> Math.signum(lateral.x() - medial.x())))
                .orElse(side == Side.RIGHT ? -1.0 : 1.0);
    }
}
