package org.espalier.science.planning;

import org.espalier.science.quantity.Length;

/**
 * The cross-section of a screw where it enters the bone.
 *
 * <p>Source: bending of a round bar, any text on strength of materials. Error: the notch of a thread (factor 2 to 3) is
 * left out; figures are for comparing screws, not for calculating one.
 *
 * @param core diameter at the root of the thread, above 0
 * @param cannula inner diameter, 0 for a solid screw, below the core
 */
public record ScrewShank(Length core, Length cannula) {

    /**
     * Checks the diameters.
     *
     * @throws IllegalArgumentException if the cannula is negative or not smaller than the core
     */
    public ScrewShank {
        if (!(cannula.millimetres() >= 0 && cannula.millimetres() < core.millimetres())) {
            throw new IllegalArgumentException(
                    "The cannula is smaller than the core, not " + cannula.millimetres() + " in " + core.millimetres());
        }
    }

    /** A solid shank. */
    public static ScrewShank solid(double coreMillimetres) {
        return new ScrewShank(new Length(coreMillimetres), new Length(0));
    }

    /** A hollow shank. */
    public static ScrewShank cannulated(double coreMillimetres, double cannulaMillimetres) {
        return new ScrewShank(new Length(coreMillimetres), new Length(cannulaMillimetres));
    }

    /** The second moment of area, mm⁴: π (D⁴ − d⁴) / 64. */
    public double secondMoment() {
        return Math.PI * (fourth(core) - fourth(cannula)) / 64;
    }

    /** The section modulus, mm³: π (D⁴ − d⁴) / (32 D). */
    public double sectionModulus() {
        return 2 * secondMoment() / core.millimetres();
    }

    /** The section modulus as a part of a solid shank's with the same core: 1 − (d/D)⁴. */
    public double ofSolid() {
        return 1 - fourth(cannula) / fourth(core);
    }

    /**
     * The bending stress where a free head stands off the bone: V h / Z.
     *
     * @param forceNewton along the bone, at the head
     * @param exposed length between bone and head, not negative
     * @return N/mm² (MPa)
     */
    public double cantileverStress(double forceNewton, Length exposed) {
        return forceNewton * exposed.millimetres() / sectionModulus();
    }

    /**
     * The moment at which the surface begins to yield: σ Z.
     *
     * @param yieldStress N/mm²
     * @return N·mm
     */
    public double firstYieldMoment(double yieldStress) {
        return yieldStress * sectionModulus();
    }

    private static double fourth(Length length) {
        double square = length.millimetres() * length.millimetres();
        return square * square;
    }
}
