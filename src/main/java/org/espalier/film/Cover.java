package org.espalier.film;

/**
 * A rectangle of a film to be made black in a copy.
 *
 * @param x left edge in pixels of the film
 * @param y upper edge
 * @param width pixels, above 0
 * @param height pixels, above 0
 */
public record Cover(double x, double y, double width, double height) {

    public Cover {
        if (!Double.isFinite(x + y) || !(width > 0 && height > 0 && width < 1e6 && height < 1e6)) {
            throw new IllegalArgumentException("no rectangle: " + x + ", " + y + ", " + width + ", " + height);
        }
    }

    /** Blackens each channel of the rows and columns it touches; what lies outside the picture is left out. */
    void blacken(int columns, int rows, int channels, Blackening blackening) {
        int left = (int) Math.clamp(Math.floor(x), 0, columns);
        int right = (int) Math.clamp(Math.ceil(x + width), 0, columns);
        int top = (int) Math.clamp(Math.floor(y), 0, rows);
        int bottom = (int) Math.clamp(Math.ceil(y + height), 0, rows);
        for (int row = top; row < bottom; row++) {
            blackening.fill((row * columns + left) * channels, (row * columns + right) * channels);
        }
    }

    /** Makes a run of samples black. */
    interface Blackening {
        void fill(int from, int to);
    }
}
