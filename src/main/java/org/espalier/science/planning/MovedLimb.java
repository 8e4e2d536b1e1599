package org.espalier.science.planning;

import java.util.List;
import java.util.stream.IntStream;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PlanePoint;

/**
 * A film cut and moved: all that lies below a cut turns about a hinge.
 *
 * <p>Points are brought to the plane, turned and brought back, so that pixels that are not square do no harm. A round
 * cut has the hinge as its centre and the mean distance of its ends from there as its radius.
 *
 * @param kind how the cut runs between its ends
 * @param cutFrom one end of the cut, pixels
 * @param cutTo the other end, pixels
 * @param hinge about which the lower part turns, pixels
 * @param clockwise the turn as seen on the film, x right and y down, + clockwise
 */
public record MovedLimb(CutKind kind, PixelPoint cutFrom, PixelPoint cutTo, PixelPoint hinge, Angle clockwise) {

    private static final int STEPS = 24;

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

    /**
     * Whether a point lies below the cut, on the side of the foot.
     *
     * @param point pixels
     * @param calibration of the film
     */
    public boolean isBelow(PixelPoint point, Calibration calibration) {
        boolean belowTheLine = isBelow(point, cutFrom, cutTo);
        if (kind == CutKind.STRAIGHT) {
            return belowTheLine;
        }
        boolean inside = distance(point, hinge, calibration) < radius(calibration);
        return isBelow(hinge, cutFrom, cutTo) ? belowTheLine || inside : belowTheLine && !inside;
    }

    private static boolean isBelow(PixelPoint point, PixelPoint one, PixelPoint other) {
        PixelPoint left = one.x() <= other.x() ? one : other;
        PixelPoint right = one.x() <= other.x() ? other : one;
        return (right.x() - left.x()) * (point.y() - left.y()) - (right.y() - left.y()) * (point.x() - left.x()) > 0;
    }

    /**
     * The cut from its left to its right end as it is seen on the film: two points, or a row along the arc.
     *
     * @param calibration of the film
     */
    public List<PixelPoint> line(Calibration calibration) {
        PixelPoint left = cutFrom.x() <= cutTo.x() ? cutFrom : cutTo;
        PixelPoint right = cutFrom.x() <= cutTo.x() ? cutTo : cutFrom;
        if (kind == CutKind.STRAIGHT) {
            return List.of(left, right);
        }
        double from = bearing(left, calibration);
        double across = Math.IEEEremainder(bearing(right, calibration) - from, 2 * Math.PI);
        PlanePoint centre = calibration.toPlane(hinge);
        double radius = radius(calibration);
        return IntStream.rangeClosed(0, STEPS)
                .mapToDouble(step -> from + across * step / STEPS)
                .mapToObj(at -> calibration.toPixels(
                        new PlanePoint(centre.x() + radius * Math.cos(at), centre.y() + radius * Math.sin(at))))
                .toList();
    }

    /** From the hinge to the cut: the mean distance of its ends, in the unit of the calibrated plane. */
    public double radius(Calibration calibration) {
        return (distance(cutFrom, hinge, calibration) + distance(cutTo, hinge, calibration)) / 2;
    }

    private double bearing(PixelPoint point, Calibration calibration) {
        PlanePoint centre = calibration.toPlane(hinge);
        PlanePoint place = calibration.toPlane(point);
        return Math.atan2(place.y() - centre.y(), place.x() - centre.x());
    }

    private static double distance(PixelPoint one, PixelPoint other, Calibration calibration) {
        PlanePoint a = calibration.toPlane(one);
        PlanePoint b = calibration.toPlane(other);
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
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
            if (isBelow(entry.getValue(), calibration)) {
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
