package org.espalier.science.growth;

import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Weight;

/**
 * Weight over height squared.
 *
 * @param kilogramsPerSquareMetre kg/m², above 0 to 200
 */
public record BodyMassIndex(double kilogramsPerSquareMetre) {

    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if not above 0 and at most 200
     */
    public BodyMassIndex {
        if (!(kilogramsPerSquareMetre > 0 && kilogramsPerSquareMetre <= 200)) {
            throw new IllegalArgumentException(
                    "A body mass index lies above 0 and at most at 200 kg/m2, not at " + kilogramsPerSquareMetre);
        }
    }

    /**
     * From weight and standing height of the same day.
     *
     * @throws IllegalArgumentException if the height is not above 0 or the index out of range: one of both is mistaken
     */
    public static BodyMassIndex of(Weight weight, Length height) {
        return new BodyMassIndex(weight.kilograms() / (height.toMetres() * height.toMetres()));
    }
}
