package org.espalier.science.quantity;

/**
 * An angle or a difference of angles.
 *
 * <p>Zero and positive sense belong to whoever measures; the value is kept as given, not folded.
 *
 * @param degrees degrees, −360 to 360
 */
public record Angle(double degrees) implements Comparable<Angle> {

    /** Zero degrees. */
    public static final Angle ZERO = new Angle(0);

    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if not a number or outside −360 to 360
     */
    public Angle {
        if (!(Math.abs(degrees) <= 360)) {
            throw new IllegalArgumentException("An angle lies between -360 and 360 degrees, not at " + degrees);
        }
    }

    /**
     * An angle given in degrees.
     *
     * @param degrees degrees, −360 to 360
     */
    public static Angle ofDegrees(double degrees) {
        return new Angle(degrees);
    }

    /**
     * An angle given in radians.
     *
     * @param radians radians, −2π to 2π
     */
    public static Angle ofRadians(double radians) {
        return new Angle(Math.toDegrees(radians));
    }

    /** This angle in radians. */
    public double toRadians() {
        return Math.toRadians(degrees);
    }

    /** The sum of both angles. */
    public Angle plus(Angle other) {
        return new Angle(degrees + other.degrees);
    }

    /** This angle less the other. */
    public Angle minus(Angle other) {
        return new Angle(degrees - other.degrees);
    }

    /** The angle without its sign. */
    public Angle abs() {
        return new Angle(Math.abs(degrees));
    }

    /** Whether both angles differ by no more than the tolerance. */
    public boolean isCloseTo(Angle other, Angle tolerance) {
        return Math.abs(degrees - other.degrees) <= tolerance.degrees;
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }
}
