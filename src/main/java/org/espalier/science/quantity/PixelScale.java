package org.espalier.science.quantity;

/**
 * The size of a pixel, across and down; the two may differ.
 *
 * @param millimetresPerPixelX millimetres a pixel measures across, above 0
 * @param millimetresPerPixelY millimetres a pixel measures down, above 0
 */
public record PixelScale(double millimetresPerPixelX, double millimetresPerPixelY) {

    /**
     * Checks that both sizes are usable.
     *
     * @throws IllegalArgumentException if either is not finite and above 0
     */
    public PixelScale {
        requirePositive(millimetresPerPixelX);
        requirePositive(millimetresPerPixelY);
    }

    /** A scale given across and down, in millimetres a pixel. */
    public static PixelScale of(double millimetresPerPixelX, double millimetresPerPixelY) {
        return new PixelScale(millimetresPerPixelX, millimetresPerPixelY);
    }

    /** The scale of square pixels, in millimetres a pixel. */
    public static PixelScale ofSquare(double millimetresPerPixel) {
        return new PixelScale(millimetresPerPixel, millimetresPerPixel);
    }

    /** This scale with both sizes multiplied by the factor, which is above 0. */
    public PixelScale times(double factor) {
        return new PixelScale(millimetresPerPixelX * factor, millimetresPerPixelY * factor);
    }

    private static void requirePositive(double millimetresPerPixel) {
        if (!(millimetresPerPixel > 0 && Double.isFinite(millimetresPerPixel))) {
            throw new IllegalArgumentException(
                    "A pixel measures a finite number of millimetres above 0, not " + millimetresPerPixel);
        }
    }
}
