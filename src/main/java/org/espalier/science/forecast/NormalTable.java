package org.espalier.science.forecast;

import org.hipparchus.special.Erf;

/**
 * The normal distribution function by table, for sums over many thousand parts.
 *
 * <p>Between points 1/64 apart the third-order polynomial that meets values and densities at both. Error: below 1e-9.
 */
final class NormalTable {

    private static final double REACH = 8;
    private static final int PER_UNIT = 64;
    private static final int POINTS = (int) (2 * REACH * PER_UNIT) + 1;
    private static final double[] BELOW = new double[POINTS];
    private static final double[] SLOPE = new double[POINTS];
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    static {
        for (int i = 0; i < POINTS; i++) {
            double z = -REACH + (double) i / PER_UNIT;
            BELOW[i] = Erf.erfc(-z / Math.sqrt(2)) / 2;
            SLOPE[i] = density(z) / PER_UNIT;
        }
    }

    private NormalTable() {}

    static double density(double z) {
        return Math.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    static double below(double z) {
        if (z >= REACH) {
            return 1;
        }
        if (!(z > -REACH)) {
            return 0;
        }
        double at = (z + REACH) * PER_UNIT;
        int i = (int) at;
        double t = at - i;
        double step = BELOW[i + 1] - BELOW[i];
        double bend = SLOPE[i] + SLOPE[i + 1] - 2 * step;
        return BELOW[i] + t * (SLOPE[i] + t * (3 * step - 2 * SLOPE[i] - SLOPE[i + 1] + t * bend));
    }
}
