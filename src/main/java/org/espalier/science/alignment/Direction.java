package org.espalier.science.alignment;

import org.espalier.science.quantity.PlanePoint;

/**
 * A direction in the plane, from one point to another.
 *
 * @param x component to the right
 * @param y component down
 */
record Direction(double x, double y) {

    /** No direction: what two points that lie on each other give. */
    static final Direction NONE = new Direction(0, 0);

    /** Points nearer than this, in the plane's unit, lie on each other: far below what a hand can set. */
    private static final double COINCIDENT = 1e-9;

    static Direction between(PlanePoint from, PlanePoint to) {
        return new Direction(to.x() - from.x(), to.y() - from.y());
    }

    boolean isZero() {
        return length() < COINCIDENT;
    }

    double length() {
        return Math.hypot(x, y);
    }

    Direction unit() {
        return new Direction(x / length(), y / length());
    }

    Direction plus(Direction other) {
        return new Direction(x + other.x, y + other.y);
    }

    Direction reversed() {
        return new Direction(-x, -y);
    }

    /** The perpendicular that points laterally when this points distally, in the frame of {@link LimbFrame}. */
    Direction lateralPerpendicular() {
        return new Direction(y, -x);
    }

    double dot(Direction other) {
        return x * other.x + y * other.y;
    }

    /** Positive when the shorter turn from this to the other goes from right to down. */
    double cross(Direction other) {
        return x * other.y - y * other.x;
    }

    /** The turn from this to the other in degrees, in (−180, 180], positive from right to down. */
    double turnTo(Direction other) {
        return Math.toDegrees(Math.atan2(cross(other), dot(other)));
    }
}
