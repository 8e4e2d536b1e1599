package org.espalier.demo.drawn;

/** Dark clouds over the pelvis. */
final class BowelGas {

    private final double unit;
    private final int seed;

    /**
     * @param unit half the distance between the hips, mm
     */
    BowelGas(double unit, int seed) {
        this.unit = unit;
        this.seed = seed;
    }

    /** Millimetres of flesh that gas takes the place of on this ray. */
    double gas(double x, double y, double muscle) {
        double across = x / (0.75 * unit);
        double up = (y + 1.05 * unit) / (0.8 * unit);
        double inside = 1 - across * across - up * up;
        if (inside <= 0) {
            return 0;
        }
        double loops = 0.7 * Grain.hills(x / (0.3 * unit), y / (0.24 * unit), seed + 9)
                + 0.4 * Grain.hills(x / (0.11 * unit), y / (0.1 * unit), seed + 10);
        double cloud = Math.clamp((loops - 0.12) * 2.2, 0, 1);
        return Math.min(0.5 * muscle, 0.42 * unit * cloud * Math.min(1, 2.5 * inside));
    }
}
