package org.espalier.science.quantity;

/**
 * A length, or a distance with a sign whose sense belongs to whoever measures.
 *
 * @param millimetres millimetres, finite
 */
public record Length(double millimetres) implements Comparable<Length> {

    /**
     * Checks that the value is a number.
     *
     * @throws IllegalArgumentException if not finite
     */
    public Length {
        if (!Double.isFinite(millimetres)) {
            throw new IllegalArgumentException("A length is a finite number of millimetres, not " + millimetres);
        }
    }

    /**
     * A length given in millimetres.
     *
     * @param millimetres millimetres, finite
     */
    public static Length ofMillimetres(double millimetres) {
        return new Length(millimetres);
    }

    /**
     * A length given in centimetres.
     *
     * @param centimetres centimetres, finite
     */
    public static Length ofCentimetres(double centimetres) {
        return new Length(centimetres * 10);
    }

    /** This length in metres. */
    public double toMetres() {
        return millimetres / 1000;
    }

    /** The sum of both lengths. */
    public Length plus(Length other) {
        return new Length(millimetres + other.millimetres);
    }

    /** This length less the other. */
    public Length minus(Length other) {
        return new Length(millimetres - other.millimetres);
    }

    /** The length without its sign. */
    public Length abs() {
        return new Length(Math.abs(millimetres));
    }

    /** Whether both lengths differ by no more than the tolerance. */
    public boolean isCloseTo(Length other, Length tolerance) {
        return Math.abs(millimetres - other.millimetres) <= tolerance.millimetres;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(millimetres, other.millimetres);
    }
}
