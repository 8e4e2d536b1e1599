package org.espalier.science.alignment;

import java.util.OptionalDouble;
import org.espalier.science.quantity.Angle;

/**
 * The tibia's share of a varus that lies in both bones, in percent: tibial / (tibial + femoral) · 100.
 *
 * <p>The paper's own zero could not be seen, and the zero moves the share across the line of 50 %: it has to be told
 * with every share. Source: Bowen, Dorey and Moseley, J Pediatr Orthop 2002;22:105.
 */
public final class TibialShare {

    private TibialShare() {}

    /** What counts as no deformity. */
    public enum Zero {
        /** Both joint lines square to their bone's axis. */
        RIGHT_ANGLES(90, 90),
        /** mLDFA 88 and mMPTA 87 degrees, the adult means (from memory). */
        ADULT_MEANS(88, 87);

        private final double mldfa;
        private final double mmpta;

        Zero(double mldfa, double mmpta) {
            this.mldfa = mldfa;
            this.mmpta = mmpta;
        }
    }

    /**
     * The share.
     *
     * @param mldfa measured on the film
     * @param mmpta measured on the film
     * @param zero what counts as no deformity
     * @return 0 to 100; empty when not both bones are in varus or none is
     */
    public static OptionalDouble percent(Angle mldfa, Angle mmpta, Zero zero) {
        double femoral = mldfa.degrees() - zero.mldfa;
        double tibial = zero.mmpta - mmpta.degrees();
        return femoral >= 0 && tibial >= 0 && femoral + tibial > 0
                ? OptionalDouble.of(100 * tibial / (femoral + tibial))
                : OptionalDouble.empty();
    }
}
