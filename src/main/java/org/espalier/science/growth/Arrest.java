package org.espalier.science.growth;

import java.util.Set;
import org.espalier.science.quantity.Length;

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
        double shares = plates.stream().mapToDouble(GrowthPlate::shareOfLeg).sum();
        return new Length(legGrowthLeft.millimetres() * shares);
    }
}
