package org.espalier.science.alignment;

import java.util.OptionalDouble;
import org.espalier.science.quantity.Angle;

/**
 * The femur's metaphyseal-diaphyseal angle over the tibia's: below 1 the tibia leads. A turn of the limb changes it
 * less than either angle.
 *
 * <p>Source: McCarthy and others, J Pediatr Orthop 2001;21:545 (below 1: 10 % false negative, 7 % false positive;
 * between readers 0.78, same reader 0.98; read).
 */
public final class FemoralTibialRatio {

    private FemoralTibialRatio() {}

    /**
     * The ratio.
     *
     * @param femoral FMDA, positive in varus
     * @param tibial MDA, positive in varus
     * @return empty where the tibia is not in varus, so that a ratio says nothing
     */
    public static OptionalDouble of(Angle femoral, Angle tibial) {
        return tibial.degrees() > 0 ? OptionalDouble.of(femoral.degrees() / tibial.degrees()) : OptionalDouble.empty();
    }
}
