package org.espalier.science.quantity;

/**
 * The weight of a child.
 *
 * @param kilograms kilograms, above 0 to 500
 */
public record Weight(double kilograms) {

    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if not above 0 and at most 500
     */
    public Weight {
        if (!(kilograms > 0 && kilograms <= 500)) {
            throw new IllegalArgumentException("A weight lies above 0 and at most at 500 kg, not at " + kilograms);
        }
    }

    /**
     * A weight given in kilograms.
     *
     * @param kilograms kilograms, above 0 to 500
     */
    public static Weight ofKilograms(double kilograms) {
        return new Weight(kilograms);
    }
}
