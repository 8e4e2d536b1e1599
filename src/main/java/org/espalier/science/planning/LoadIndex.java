package org.espalier.science.planning;

import org.espalier.science.quantity.Length;

/**
 * How much harder an exposed screw is bent than one seated on the bone: a ratio of stresses, no chance of breakage.
 *
 * <p>The screw in the bone is a half-endless beam on an elastic bed, {@code λ = (k / 4EI)^(1/4)}; a force V at height h
 * above the bone bends it by at most
 *
 * <pre>
 * M(h) = V e^(−q) (sin q / λ + h (cos q + sin q)),   q = atan(1 / (1 + 2λh));   M(0) = 0.32240 V / λ
 * </pre>
 *
 * <p>Source: beam on elastic foundation (Hetényi 1946, from memory). Error: force (100 to 500 N) and bed are not known;
 * a film shows the least of h; notches, friction and remodelling are left out. Grades are judged here and await audit.
 *
 * @param perMillimetre λ, of the seated screw in its bed, 1/mm, above 0
 */
public record LoadIndex(double perMillimetre) {

    /** Order of the load, against a screw seated on the bone. */
    public enum Grade {
        /** Below 1.5 times. */
        LOW,
        /** 1.5 to 2.5 times. */
        RAISED,
        /** Above 2.5 times. */
        HIGH
    }

    /** What the screw is made of. */
    public enum Material {
        /** Stainless steel, 193 GPa. */
        STEEL(193_000),
        /** Titanium alloy, 110 GPa. */
        TITANIUM_ALLOY(110_000);

        private final double youngsModulus;

        Material(double youngsModulus) {
            this.youngsModulus = youngsModulus;
        }
    }

    private static final double SEATED = seated();

    /**
     * Checks λ.
     *
     * @throws IllegalArgumentException if it is not above 0
     */
    public LoadIndex {
        if (!(perMillimetre > 0)) {
            throw new IllegalArgumentException("The screw's bed has a stiffness above 0, not " + perMillimetre);
        }
    }

    /**
     * The index for a screw in a bed.
     *
     * @param shank of the screw
     * @param material of the screw
     * @param bedStiffness k of the bone, N/mm², about 500 to 5000
     */
    public static LoadIndex of(ScrewShank shank, Material material, double bedStiffness) {
        return new LoadIndex(Math.pow(bedStiffness / (4 * material.youngsModulus * shank.secondMoment()), 0.25));
    }

    /**
     * The greatest moment in a seated or exposed screw for a force of 1 N.
     *
     * @param exposed length outside the bone, not negative
     * @return N·mm for each newton
     */
    public double momentPerNewton(Length exposed) {
        double h = exposed.millimetres();
        if (!(h >= 0)) {
            throw new IllegalArgumentException("An exposed length is not negative, as " + h + " mm");
        }
        return moment(perMillimetre * h) / perMillimetre;
    }

    /**
     * The stress against that of the same screw seated on the bone.
     *
     * @param exposed length outside the bone, not negative
     * @return 1 and above
     */
    public double against(Length exposed) {
        return momentPerNewton(exposed) * perMillimetre / SEATED;
    }

    /**
     * The order of it.
     *
     * @param exposed length outside the bone, not negative
     */
    public Grade grade(Length exposed) {
        double index = against(exposed);
        if (index < 1.5) {
            return Grade.LOW;
        }
        return index <= 2.5 ? Grade.RAISED : Grade.HIGH;
    }

    private static double seated() {
        return moment(0);
    }

    /** λ M / V at λh. */
    private static double moment(double height) {
        double q = Math.atan(1 / (1 + 2 * height));
        return Math.exp(-q) * (Math.sin(q) + height * (Math.cos(q) + Math.sin(q)));
    }
}
