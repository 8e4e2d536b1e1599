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
        double bentX = 0.8 * x + 0.6 * y + 0.2 * unit * Grain.hills(x / (0.2 * unit), y / (0.2 * unit), seed + 11);
        double bentY = 0.8 * y - 0.6 * x + 0.2 * unit * Grain.hills(y / (0.2 * unit), x / (0.2 * unit), seed + 12);
        double loops = 0.75 * Grain.hills(bentX / (0.34 * unit), bentY / (0.26 * unit), seed + 9)
                + 0.25 * Grain.hills(bentY / (0.13 * unit), bentX / (0.13 * unit), seed + 10);
        double cloud = Math.clamp((loops - 0.16) * 1.5, 0, 1);
        return Math.min(0.5 * muscle, 0.34 * unit * cloud * (2 - cloud) * Math.min(1, 2.5 * inside));
    }
}
