package org.espalier.science.planning;

import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PlanePoint;

/**
 * A film cut and moved: all that lies below a cut turns about a hinge.
 *
 * <p>Points are brought to the plane, turned and brought back, so that pixels that are not square do no harm.
 *
 * @param cutFrom one end of the cut, pixels
 * @param cutTo the other end, pixels
 * @param hinge about which the lower part turns, pixels
 * @param clockwise the turn as seen on the film, x right and y down, + clockwise
 */
public record MovedLimb(PixelPoint cutFrom, PixelPoint cutTo, PixelPoint hinge, Angle clockwise) {

    /**
     * Checks that the cut has two ends.
     *
     * @throws IllegalArgumentException if they coincide
     */
    public MovedLimb {
        if (cutFrom.equals(cutTo)) {
            throw new IllegalArgumentException("A cut needs two different ends, not twice " + cutFrom);
        }
    }

    /** Whether a point lies below the cut, on the side of the foot. */
    public boolean isBelow(PixelPoint point) {
        PixelPoint left = cutFrom.x() <= cutTo.x() ? cutFrom : cutTo;
        PixelPoint right = cutFrom.x() <= cutTo.x() ? cutTo : cutFrom;
        return (right.x() - left.x()) * (point.y() - left.y()) - (right.y() - left.y()) * (point.x() - left.x()) > 0;
    }

    /**
     * The landmarks after the cut.
     *
     * @param landmarks before
     * @param calibration of the film
     */
    public LimbLandmarks apply(LimbLandmarks landmarks, Calibration calibration) {
        LimbLandmarks moved = landmarks;
        for (var entry : landmarks.points().entrySet()) {
            if (isBelow(entry.getValue())) {
                moved = moved.with(entry.getKey(), turned(entry.getValue(), calibration));
            }
        }
        return moved;
    }

    /**
     * Where a point of the lower part comes to lie.
     *
     * @param point pixels
     * @param calibration of the film
     */
    public PixelPoint turned(PixelPoint point, Calibration calibration) {
        PlanePoint centre = calibration.toPlane(hinge);
        PlanePoint place = calibration.toPlane(point);
        double sine = Math.sin(clockwise.toRadians());
        double cosine = Math.cos(clockwise.toRadians());
        double x = place.x() - centre.x();
        double y = place.y() - centre.y();
        return calibration.toPixels(
                new PlanePoint(centre.x() + x * cosine - y * sine, centre.y() + x * sine + y * cosine));
    }
}
