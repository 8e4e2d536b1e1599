package org.espalier.science.planning;

/**
 * A direction or a place in space, in the frame of a right limb.
 *
 * @param lateral towards the outside, finite
 * @param anterior towards the front, finite
 * @param proximal towards the hip, finite
 */
public record Bearing(double lateral, double anterior, double proximal) {

    static final Bearing PROXIMAL = new Bearing(0, 0, 1);

    /**
     * Checks that all three are numbers.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public Bearing {
        if (!Double.isFinite(lateral) || !Double.isFinite(anterior) || !Double.isFinite(proximal)) {
            throw new IllegalArgumentException(
                    "A place has finite coordinates, not " + lateral + ", " + anterior + ", " + proximal);
        }
    }

    /** The distance from the origin, in the unit of the coordinates. */
    public double length() {
        return Math.hypot(Math.hypot(lateral, anterior), proximal);
    }

    /** The part of it that lies across the bone. */
    public double acrossTheBone() {
        return Math.hypot(lateral, anterior);
    }

    /** The sum of both. */
    public Bearing plus(Bearing other) {
        return new Bearing(lateral + other.lateral, anterior + other.anterior, proximal + other.proximal);
    }

    /** This less the other. */
    public Bearing minus(Bearing other) {
        return plus(other.times(-1));
    }

    /** This, stretched by the factor. */
    public Bearing times(double factor) {
        return new Bearing(factor * lateral, factor * anterior, factor * proximal);
    }

    double dot(Bearing other) {
        return lateral * other.lateral + anterior * other.anterior + proximal * other.proximal;
    }

    Bearing cross(Bearing other) {
        return new Bearing(
                anterior * other.proximal - proximal * other.anterior,
                proximal * other.lateral - lateral * other.proximal,
                lateral * other.anterior - anterior * other.lateral);
    }

    Bearing unit() {
        return times(1 / length());
    }
}
