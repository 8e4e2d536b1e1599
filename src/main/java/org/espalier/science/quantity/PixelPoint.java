package org.espalier.science.quantity;

/**
 * A point of a film as stored: x runs right, y runs down, the origin is the outer corner of the top left pixel.
 *
 * <p>Flipping or turning the film on the screen does not change it.
 *
 * @param x pixels to the right, finite; fractions are meant
 * @param y pixels down, finite; fractions are meant
 */
public record PixelPoint(double x, double y) {

    /**
     * Checks that both coordinates are numbers.
     *
     * @throws IllegalArgumentException if either is not finite
     */
    public PixelPoint {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("A point of a film has finite coordinates, not " + x + ", " + y);
        }
    }

    /** The point with these coordinates. */
    public static PixelPoint of(double x, double y) {
        return new PixelPoint(x, y);
    }
}
