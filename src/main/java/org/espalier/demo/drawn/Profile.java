package org.espalier.demo.drawn;

/**
 * How thick a bone is along its length: knots of position, rounding radius, half depth, cortex and spongy share.
 *
 * <p>The rounding radius is the distance from the outline over which the bone reaches its full half depth, as an
 * ellipse; cortex is the wall in mm; the spongy share is how much of a mm of cortex a mm of the inside absorbs.
 */
final class Profile {

    private static final int RADIUS = 1;
    private static final int DEPTH = 2;
    private static final int CORTEX = 3;
    private static final int SPONGY = 4;

    private final double from;
    private final float[][] values;

    private Profile(double from, float[][] values) {
        this.from = from;
        this.values = values;
    }

    /** Knots in rising order of position, mm along the bone. */
    static Profile of(double[]... knots) {
        double from = knots[0][0];
        int count = (int) Math.ceil(knots[knots.length - 1][0] - from) + 1;
        float[][] values = new float[count][];
        int upper = 1;
        for (int i = 0; i < count; i++) {
            while (upper < knots.length - 1 && knots[upper][0] < from + i) {
                upper++;
            }
            double[] a = knots[upper - 1];
            double[] b = knots[upper];
            values[i] = between(a, b, Math.clamp((from + i - a[0]) / Math.max(1e-6, b[0] - a[0]), 0, 1));
        }
        return new Profile(from, values);
    }

    static Profile constant(double radius, double depth, double cortex, double spongy) {
        return of(new double[] {0, radius, depth, cortex, spongy}, new double[] {1, radius, depth, cortex, spongy});
    }

    private static float[] between(double[] a, double[] b, double share) {
        double eased = share * share * (3 - 2 * share);
        float[] row = new float[a.length];
        for (int i = 0; i < a.length; i++) {
            row[i] = (float) (a[i] + eased * (b[i] - a[i]));
        }
        return row;
    }

    /**
     * Path of the ray through wall and inside, in mm of cortical bone.
     *
     * @param position mm along the bone
     * @param inward mm from the outline
     * @param grain factor on the spongy inside, near 1
     */
    double path(double position, double inward, double grain) {
        float[] at = values[Math.clamp((int) Math.round(position - from), 0, values.length - 1)];
        double outer = chord(inward, at[RADIUS], at[DEPTH]);
        double inner = 0;
        if (inward > at[CORTEX]) {
            double radius = Math.max(0.1, at[RADIUS] - at[CORTEX]);
            inner = chord(inward - at[CORTEX], radius, Math.max(0, at[DEPTH] - at[CORTEX]));
        }
        return Math.max(0, outer - inner) + inner * at[SPONGY] * grain;
    }

    private static double chord(double inward, double radius, double depth) {
        double u = 1 - Math.min(1, inward / radius);
        return 2 * depth * Math.sqrt(1 - u * u);
    }
}
