package org.espalier.demo.drawn;

import org.espalier.science.quantity.Length;

/**
 * What is to be drawn: the child's size, both legs, how plump, on which sheet, with which grain.
 *
 * @param plump 1 for a slim child to 1.8 for a very heavy one
 * @param seed the same order with the same seed gives the same film, pixel by pixel
 */
public record FilmOrder(
        BodyProportions body, DrawnLimb right, DrawnLimb left, double plump, FilmSheet sheet, long seed) {

    public FilmOrder {
        if (!(plump >= 1 && plump <= 1.8)) {
            throw new IllegalArgumentException("plump must be 1 to 1.8: " + plump);
        }
    }

    /**
     * The detector and where things stand before it.
     *
     * @param pixel side of a square pixel at the detector
     * @param magnification of the plane of the bones, 1 to 1.3
     * @param ballMagnification of the plane of the calibration ball, 1 to 1.3
     * @param ball diameter of the calibration ball
     */
    public record FilmSheet(Length pixel, double magnification, double ballMagnification, Length ball) {

        public FilmSheet {
            if (!(magnification >= 1 && magnification <= 1.3 && ballMagnification >= 1 && ballMagnification <= 1.3)) {
                throw new IllegalArgumentException(
                        "magnification must be 1 to 1.3: " + magnification + ", ball " + ballMagnification);
            }
        }

        /** A detector with that pixel, bones at 1.05 and a 25 mm ball at their level. */
        public static FilmSheet ofPixel(Length pixel) {
            return new FilmSheet(pixel, 1.05, 1.05, new Length(25));
        }
    }
}
