package org.espalier.film.internal.dicom.codec;

/** The inverse discrete cosine transform of 8 × 8 blocks as T.81 section A.3.3 defines it, in double precision. */
final class InverseDct {

    static final int SIZE = 8;

    private static final double[] BASIS = basis();

    private final double[] rows = new double[SIZE * SIZE];
    private final double[] block = new double[SIZE * SIZE];

    /** The samples of dequantised coefficients in natural order, before level shift; valid until the next call. */
    double[] transform(int[] coefficients) {
        for (int v = 0; v < SIZE; v++) {
            row(coefficients, v * SIZE);
        }
        for (int x = 0; x < SIZE; x++) {
            column(x);
        }
        return block;
    }

    private void row(int[] coefficients, int at) {
        for (int x = 0; x < SIZE; x++) {
            double sum = 0;
            for (int u = 0; u < SIZE; u++) {
                sum += coefficients[at + u] * BASIS[x * SIZE + u];
            }
            rows[at + x] = sum;
        }
    }

    private void column(int x) {
        for (int y = 0; y < SIZE; y++) {
            double sum = 0;
            for (int v = 0; v < SIZE; v++) {
                sum += rows[v * SIZE + x] * BASIS[y * SIZE + v];
            }
            block[y * SIZE + x] = sum;
        }
    }

    /** C(u)/2 · cos((2x + 1)uπ/16). */
    private static double[] basis() {
        double[] basis = new double[SIZE * SIZE];
        for (int x = 0; x < SIZE; x++) {
            for (int u = 0; u < SIZE; u++) {
                double scale = u == 0 ? Math.sqrt(0.125) : 0.5;
                basis[x * SIZE + u] = scale * Math.cos((2 * x + 1) * u * Math.PI / 16);
            }
        }
        return basis;
    }
}
