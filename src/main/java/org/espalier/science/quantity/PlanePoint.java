package org.espalier.science.quantity;

/**
 * A point of the film's plane: millimetres when the film is calibrated, square pixels when it is not; x runs right, y
 * runs down.
 *
 * @param x to the right, finite
 * @param y down, finite
 */
public record PlanePoint(double x, double y) {

    /**
     * Checks that both coordinates are numbers.
     *
     * @throws IllegalArgumentException if either is not finite
     */
    public PlanePoint {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("A point of the plane has finite coordinates, not " + x + ", " + y);
        }
    }

    /** The point half-way to the other. */
    public PlanePoint midpoint(PlanePoint other) {
        return new PlanePoint((x + other.x) / 2, (y + other.y) / 2);
    }

    /** The distance to the other point, in the unit of both. */
    public double distanceTo(PlanePoint other) {
        return Math.hypot(other.x - x, other.y - y);
    }
}
