package org.espalier.demo.drawn;

import java.util.Optional;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/**
 * A drawn standing film of both legs: 12-bit pixels, bright bone, and where every landmark truly lies.
 *
 * @param stored row after row, 0 to 4095
 * @param windowCentre what a viewer should start with
 * @param detectorPixel side of a pixel at the detector
 * @param boneMagnification of the plane the landmarks lie in
 * @param headRadius of the ossified femoral head
 * @param right true places of the landmarks of the right leg, in pixels
 * @param left true places of the landmarks of the left leg, in pixels
 * @param contrast whether the knees on it are filled with contrast
 */
public record DrawnFilm(
        int width,
        int height,
        short[] stored,
        int windowCentre,
        int windowWidth,
        Length detectorPixel,
        double boneMagnification,
        Ball ball,
        Length headRadius,
        LimbLandmarks right,
        LimbLandmarks left,
        boolean contrast) {

    /** Said on the film and in its comments. */
    public static final String MARK = "DRAWN - NOT A PATIENT";

    /**
     * The calibration ball as it fell on the film.
     *
     * @param diameterPixels on the film
     * @param diameter of the ball itself
     */
    public record Ball(PixelPoint centre, double diameterPixels, Length diameter) {}

    /** Draws a film. */
    public static DrawnFilm draw(FilmOrder order) {
        return new FilmPainter(order).paint();
    }

    /** True places of the landmarks of one leg; what is not yet ossified is absent. */
    public LimbLandmarks landmarks(Side side) {
        return side == Side.RIGHT ? right : left;
    }

    /** The one leg on the film; empty when both are. */
    public Optional<Side> shown() {
        boolean both = !right.points().isEmpty() && !left.points().isEmpty();
        return both ? Optional.empty() : Optional.of(right.points().isEmpty() ? Side.LEFT : Side.RIGHT);
    }

    /** Side of a pixel in the plane of the bones. */
    public Length bonePixel() {
        return new Length(detectorPixel.millimetres() / boneMagnification);
    }
}
