package org.espalier.plan;

import java.util.Optional;
import org.espalier.science.alignment.AlignmentMeasurement;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.alignment.LimbNumbers;
import org.espalier.science.planning.LimbPoint;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PlanePoint;
import org.espalier.science.quantity.Side;

/**
 * A limb as its film shows it.
 *
 * @param other the landmarks of the other limb on the same film; none when it is not read
 * @param plane what points are brought to the plane by
 * @param inMillimetres whether lengths are told on this film
 */
record FilmLimb(Side side, LimbLandmarks landmarks, LimbLandmarks other, Calibration plane, boolean inMillimetres) {

    LimbNumbers numbers() {
        return numbers(landmarks);
    }

    /** The numbers of the same limb with its landmarks elsewhere. */
    LimbNumbers numbers(LimbLandmarks moved) {
        return AlignmentMeasurement.measure(side, moved, plane);
    }

    LimbNumbers numbersOfOther() {
        return AlignmentMeasurement.measure(side == Side.RIGHT ? Side.LEFT : Side.RIGHT, other, plane);
    }

    Optional<LimbPoint> at(Landmark landmark) {
        return landmarks.point(landmark).map(this::at);
    }

    Optional<LimbPoint> knee() {
        return middle(landmarks, Landmark.CONDYLE_MEDIAL, Landmark.CONDYLE_LATERAL)
                .map(this::at);
    }

    Optional<LimbPoint> shin() {
        return middle(landmarks, Landmark.PLATEAU_MEDIAL, Landmark.PLATEAU_LATERAL)
                .map(this::at);
    }

    Optional<LimbPoint> ankle() {
        return middle(landmarks, Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL)
                .map(this::at);
    }

    /** In the limb's own frame a place of the film. */
    LimbPoint at(PixelPoint point) {
        var place = plane.toPlane(point);
        return new LimbPoint(lateralSign() * place.x(), -place.y());
    }

    /** On the film a place of the limb's own frame. */
    PixelPoint pixel(LimbPoint point) {
        return plane.toPixels(new PlanePoint(lateralSign() * point.lateral(), -point.proximal()));
    }

    static Optional<PixelPoint> middle(LimbLandmarks limb, Landmark one, Landmark other) {
        return limb.point(one)
                .flatMap(a -> limb.point(other).map(b -> new PixelPoint((a.x() + b.x()) / 2, (a.y() + b.y()) / 2)));
    }

    /** Which way lateral lies on this film: by the landmarks themselves, so that a mirrored film does no harm. */
    double lateralSign() {
        return landmarks
                .point(Landmark.PLATEAU_MEDIAL)
                .flatMap(medial ->
                        landmarks.point(Landmark.PLATEAU_LATERAL).map(lateral -> Math.signum(lateral.x() - medial.x())))
                .orElse(side == Side.RIGHT ? -1.0 : 1.0);
    }
}
