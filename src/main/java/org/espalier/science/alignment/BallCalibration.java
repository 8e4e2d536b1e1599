package org.espalier.science.alignment;

import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PixelScale;

/**
 * Calibrates a film by a ball of known diameter lying at the height of the bone.
 *
 * <p>The circle is fitted in the plane of the film's own scale, or in square pixels where it has none; all is then made
 * larger or smaller until the circle has the ball's diameter.
 *
 * <p>Error: 1 pixel in the diameter of a 25 mm ball at 0.143 mm a pixel is 0.57 %; 1 cm off the bone's height is about
 * 1 % at a tube distance of 1 m, 0.34 % at 3.05 m (geometry).
 */
public final class BallCalibration {

    private BallCalibration() {}

    /**
     * The film's calibration by the ball.
     *
     * @param circle the circle fitted to the ball's edge with the film's own calibration
     * @param diameter the ball's true diameter, above 0
     * @param own the calibration the circle was fitted with
     * @throws IllegalArgumentException if the diameter is not above 0
     */
    public static Calibration of(CircleFit.Fitted circle, Length diameter, Calibration own) {
        double factor = diameter.millimetres() / (2 * circle.radius());
        PixelScale scale = own.scale().orElseGet(() -> PixelScale.ofSquare(1));
        return Calibration.ofBall(scale.times(factor), diameter);
    }
}
