package org.espalier.science.quantity;

import java.util.Optional;

/**
 * How pixels of a film become millimetres, and where that knowledge comes from.
 *
 * <p>Without calibration pixels count as square and no length in millimetres may be told; angles and ratios stay right.
 *
 * @param origin where the scale comes from
 * @param scale the size of a pixel; empty only for {@link Origin#NONE}
 * @param ballDiameter the true diameter of the ball; present only for {@link Origin#BALL}
 */
public record Calibration(Origin origin, Optional<PixelScale> scale, Optional<Length> ballDiameter) {

    private static final Calibration NONE = new Calibration(Origin.NONE, Optional.empty(), Optional.empty());

    /** Where a scale comes from. */
    public enum Origin {
        /** No scale is known. */
        NONE,
        /** The pixel size at the detector; the limb, lying before it, is shown enlarged. */
        DETECTOR_PLANE,
        /** The film's tags say: corrected for an assumed or known geometry. */
        TAG_GEOMETRY,
        /** The film's tags say: corrected by an object of known size. */
        TAG_FIDUCIAL,
        /** Fitted to a ball of known diameter on the film. */
        BALL,
        /** Told with the landmarks by whoever sent them. */
        STATED
    }

    /**
     * Checks that scale and diameter fit the origin.
     *
     * @throws IllegalArgumentException if a scale is missing or too much, or a diameter is missing, too much or not
     *     above 0
     */
    public Calibration {
        if ((origin == Origin.NONE) == scale.isPresent()) {
            throw new IllegalArgumentException("A calibration of origin " + origin + " cannot have scale " + scale);
        }
        if ((origin == Origin.BALL) != ballDiameter.isPresent()
                || ballDiameter.filter(diameter -> diameter.millimetres() <= 0).isPresent()) {
            throw new IllegalArgumentException(
                    "A calibration of origin " + origin + " cannot have ball diameter " + ballDiameter);
        }
    }

    /** A film whose scale is not known. */
    public static Calibration none() {
        return NONE;
    }

    /** The scale at the detector. */
    public static Calibration ofDetectorPlane(PixelScale scale) {
        return new Calibration(Origin.DETECTOR_PLANE, Optional.of(scale), Optional.empty());
    }

    /** The scale that the film's tags call corrected by geometry. */
    public static Calibration ofTagGeometry(PixelScale scale) {
        return new Calibration(Origin.TAG_GEOMETRY, Optional.of(scale), Optional.empty());
    }

    /** The scale that the film's tags call corrected by an object of known size. */
    public static Calibration ofTagFiducial(PixelScale scale) {
        return new Calibration(Origin.TAG_FIDUCIAL, Optional.of(scale), Optional.empty());
    }

    /** The scale fitted to a ball of this true diameter. */
    public static Calibration ofBall(PixelScale scale, Length diameter) {
        return new Calibration(Origin.BALL, Optional.of(scale), Optional.of(diameter));
    }

    /** The scale told by the sender of the landmarks. */
    public static Calibration ofStated(PixelScale scale) {
        return new Calibration(Origin.STATED, Optional.of(scale), Optional.empty());
    }

    /** Whether lengths in millimetres may be told. */
    public boolean isInMillimetres() {
        return scale.isPresent();
    }

    /** The point of the plane that a point of the film stands for. */
    public PlanePoint toPlane(PixelPoint point) {
        return scale.map(
                        s -> new PlanePoint(point.x() * s.millimetresPerPixelX(), point.y() * s.millimetresPerPixelY()))
                .orElseGet(() -> new PlanePoint(point.x(), point.y()));
    }

    /** The point of the film at which a point of the plane lies. */
    public PixelPoint toPixels(PlanePoint point) {
        return scale.map(
                        s -> new PixelPoint(point.x() / s.millimetresPerPixelX(), point.y() / s.millimetresPerPixelY()))
                .orElseGet(() -> new PixelPoint(point.x(), point.y()));
    }
}
