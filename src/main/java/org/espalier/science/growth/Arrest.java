package org.espalier.science.growth;

import java.util.OptionalDouble;
import java.util.Set;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;

/**
 * What a leg loses when growth plates are closed for good on both sides.
 *
 * <p>Source: shares of {@link GrowthPlate}. Error: that of the growth left and of the shares, about a quarter.
 */
public final class Arrest {

    private Arrest() {}

    /**
     * The length a leg will be short of what it would have reached.
     *
     * @param legGrowthLeft growth the whole leg still has, not below 0
     * @param plates those that are closed
     */
    public static Length shortening(Length legGrowthLeft, Set<GrowthPlate> plates) {
        return new Length(legGrowthLeft.millimetres() * shares(plates));
    }

    /**
     * The age at which an arrest takes so much off a leg by maturity.
     *
     * <pre>
     * left = shortening / shares,  multiplier then = L·M / (L·M − left)
     * </pre>
     *
     * @param sex the child's
     * @param age at which the leg was measured
     * @param leg femur and tibia together at that age
     * @param shortening wanted, above 0
     * @param plates those that are closed
     * @return years; below the age given when too little growth is left; empty when these plates never had so much left
     */
    public static OptionalDouble yearsFor(Sex sex, Age age, Length leg, Length shortening, Set<GrowthPlate> plates) {
        double grown = LegMultiplier.atMaturity(sex, age, leg).millimetres();
        double left = shortening.millimetres() / shares(plates);
        return left >= grown ? OptionalDouble.empty() : LegMultiplier.yearsAt(sex, grown / (grown - left));
    }

    private static double shares(Set<GrowthPlate> plates) {
        return plates.stream().mapToDouble(GrowthPlate::shareOfLeg).sum();
    }
}
