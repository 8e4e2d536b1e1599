package org.espalier.science.alignment;

import org.espalier.science.quantity.Length;

/**
 * How much longer the right is than the left, with the half-width of its 95 % range by reader error: √2 that of one
 * bone; for both bones √2 · √(femur² + tibia²). What flexion, tilt or another film adds is not in it.
 *
 * <p>Source: SEM95 of Braun and others, J Orthop Surg Res 2023;18:69 (femur 4.53 mm, tibia 3.12 mm); independent
 * errors.
 *
 * @param difference right less left
 * @param halfWidth95 above 0
 */
public record LengthDifference(Length difference, Length halfWidth95) {

    /** Of the femora. */
    public static LengthDifference ofFemora(Length right, Length left) {
        return new LengthDifference(right.minus(left), new Length(halfWidth(Quantity.FEMUR_LENGTH)));
    }

    /** Of the tibiae. */
    public static LengthDifference ofTibiae(Length right, Length left) {
        return new LengthDifference(right.minus(left), new Length(halfWidth(Quantity.TIBIA_LENGTH)));
    }

    /** Of both bones together: the difference of the femora and that of the tibiae. */
    public static LengthDifference ofBoth(LengthDifference femora, LengthDifference tibiae) {
        return new LengthDifference(
                femora.difference.plus(tibiae.difference),
                new Length(Math.hypot(femora.halfWidth95.millimetres(), tibiae.halfWidth95.millimetres())));
    }

    /** Whether it is no more than reading again would give. */
    public boolean isWithinError() {
        return difference.abs().compareTo(halfWidth95) <= 0;
    }

    private static double halfWidth(Quantity quantity) {
        return ReaderError.halfWidth95OfChange(quantity).orElseThrow();
    }
}
