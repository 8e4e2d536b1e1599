package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;

/**
 * A rotation in space as a unit quaternion, which stays exact where the trace of a matrix loses small turns.
 *
 * @param scalar cosine of half the turn
 * @param vector axis times the sine of half the turn
 */
record Turn(double scalar, Bearing vector) {

    /** A turn about an axis, right-handed. */
    static Turn about(Bearing axis, Angle angle) {
        double half = angle.toRadians() / 2;
        return new Turn(Math.cos(half), axis.unit().times(Math.sin(half)));
    }

    /** First the other, then this. */
    Turn after(Turn other) {
        Bearing sum =
                other.vector.times(scalar).plus(vector.times(other.scalar)).plus(vector.cross(other.vector));
        return new Turn(scalar * other.scalar - vector.dot(other.vector), sum);
    }

    Turn inverse() {
        return new Turn(scalar, vector.times(-1));
    }

    Bearing apply(Bearing place) {
        Bearing twice = vector.cross(place).times(2);
        return place.plus(twice.times(scalar)).plus(vector.cross(twice));
    }

    /** The turn, 0 to 360 degrees, about {@link #axis()}. */
    Angle angle() {
        return Angle.ofRadians(2 * Math.atan2(vector.length(), scalar));
    }

    Bearing axis() {
        return vector.unit();
    }

    /** The part of the turn about the length of the bone. */
    Turn twist() {
        double norm = Math.hypot(scalar, vector.proximal());
        return new Turn(scalar / norm, new Bearing(0, 0, vector.proximal() / norm));
    }
}
