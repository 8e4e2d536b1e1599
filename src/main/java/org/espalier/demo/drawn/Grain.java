package org.espalier.demo.drawn;

/** Repeatable roughness: smooth random hills for bone and flesh, and near-normal noise for quanta. */
final class Grain {

    private Grain() {}

    /** Hills about one unit apart, −1 to 1, the same for the same seed and place. */
    static double hills(double x, double y, int seed) {
        int x0 = (int) Math.floor(x);
        int y0 = (int) Math.floor(y);
        double fx = ease(x - x0);
        double fy = ease(y - y0);
        double upper = lerp(corner(x0, y0, seed), corner(x0 + 1, y0, seed), fx);
        double lower = lerp(corner(x0, y0 + 1, seed), corner(x0 + 1, y0 + 1, seed), fx);
        return lerp(upper, lower, fy);
    }

    private static double ease(double t) {
        return t * t * (3 - 2 * t);
    }

    private static double lerp(double a, double b, double t) {
        return a + (b - a) * t;
    }

    private static double corner(int x, int y, int seed) {
        return (mix((x * 0x9E3779B97F4A7C15L) ^ (y * 0xC2B2AE3D27D4EB4FL) ^ seed) >> 40) / (double) (1 << 23);
    }

    /** Sum of four uniform parts of one hashed word: mean 0, standard deviation 1. */
    static double quantum(long index, long seed) {
        long h = mix(index * 0x9E3779B97F4A7C15L + seed);
        long sum = (h & 0xffff) + (h >>> 16 & 0xffff) + (h >>> 32 & 0xffff) + (h >>> 48);
        return (sum - 131070) / 37837.0;
    }

    private static long mix(long z) {
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
