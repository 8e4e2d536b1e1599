package org.espalier.demo.drawn;

/**
 * How far each pixel of a mask lies from its edge.
 *
 * <p>Exact Euclidean distance by two passes of lower envelopes of parabolas.
 *
 * <p>Source: Felzenszwalb, Huttenlocher, Theory of Computing 2012;8:415-428, section 2.
 */
final class DistanceField {

    private static final float FAR = 1e12f;
    private static final int WHOLE = 250;

    private DistanceField() {}

    /**
     * Distance to the edge for every pixel inside.
     *
     * <p>The nearest pixel that is not wholly inside is found first; how much of it is covered says where in it the
     * edge runs, so that a slanting edge stays smooth.
     *
     * @param coverage how much of each pixel is inside, 0 to 255, row after row
     * @return pixels from the edge inside, 0 outside
     */
    static float[] inward(byte[] coverage, int width, int height) {
        float[] squared = new float[width * height];
        for (int i = 0; i < squared.length; i++) {
            squared[i] = (coverage[i] & 0xff) >= WHOLE ? FAR : 0;
        }
        Envelope envelope = new Envelope(Math.max(width, height));
        int[] nearestRow = new int[squared.length];
        for (int x = 0; x < width; x++) {
            envelope.transform(squared, nearestRow, x, width, height);
        }
        int[] nearestColumn = new int[squared.length];
        for (int y = 0; y < height; y++) {
            envelope.transform(squared, nearestColumn, y * width, 1, width);
        }
        for (int i = 0; i < squared.length; i++) {
            int column = nearestColumn[i];
            int row = nearestRow[i - i % width + column];
            float within = (coverage[row * width + column] & 0xff) / 255f - 0.5f;
            squared[i] = Math.max(0, (float) Math.sqrt(squared[i]) + within);
        }
        return squared;
    }

    /** One line of samples at a time. */
    private static final class Envelope {
        private final float[] line;
        private final int[] roots;
        private final float[] bounds;

        Envelope(int longest) {
            line = new float[longest];
            roots = new int[longest];
            bounds = new float[longest + 1];
        }

        void transform(float[] grid, int[] nearest, int start, int step, int count) {
            for (int i = 0; i < count; i++) {
                line[i] = grid[start + i * step];
            }
            build(count);
            int k = 0;
            for (int i = 0; i < count; i++) {
                while (bounds[k + 1] < i) {
                    k++;
                }
                float away = i - roots[k];
                grid[start + i * step] = away * away + line[roots[k]];
                nearest[start + i * step] = roots[k];
            }
        }

        private void build(int count) {
            int k = 0;
            roots[0] = 0;
            bounds[0] = -FAR;
            bounds[1] = FAR;
            for (int i = 1; i < count; i++) {
                float crossing = crossing(i, roots[k]);
                while (crossing <= bounds[k]) {
                    k--;
                    crossing = crossing(i, roots[k]);
                }
                k++;
                roots[k] = i;
                bounds[k] = crossing;
                bounds[k + 1] = FAR;
            }
        }

        private float crossing(int i, int j) {
            return (float) (((double) line[i] - line[j] + (double) i * i - (double) j * j) / (2.0 * (i - j)));
        }
    }
}
