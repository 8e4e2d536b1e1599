package org.espalier.film.internal.dicom.codec;

/** The samples of one component, alone or among those of others. */
final class Plane {

    private final short[] samples;
    private final int offset;
    private final int step;
    private final int columns;
    private final int rows;

    private Plane(short[] samples, int offset, int step, int columns, int rows) {
        this.samples = samples;
        this.offset = offset;
        this.step = step;
        this.columns = columns;
        this.rows = rows;
    }

    static Plane alone(int columns, int rows) {
        return new Plane(new short[columns * rows], 0, 1, columns, rows);
    }

    /** A component within interleaved samples. */
    static Plane within(short[] samples, Shape shape, int component) {
        return new Plane(samples, component, shape.components(), shape.columns(), shape.rows());
    }

    int columns() {
        return columns;
    }

    int rows() {
        return rows;
    }

    int get(int column, int row) {
        return samples[offset + (row * columns + column) * step] & 0xFFFF;
    }

    void set(int column, int row, int value) {
        samples[offset + (row * columns + column) * step] = (short) value;
    }

    /** Fills this plane from a coarser one, samples taken at the centres of what they cover, linear between them. */
    void interpolate(Plane coarse) {
        double across = (double) coarse.columns / columns;
        double down = (double) coarse.rows / rows;
        for (int row = 0; row < rows; row++) {
            double y = Math.clamp((row + 0.5) * down - 0.5, 0, coarse.rows - 1.0);
            for (int column = 0; column < columns; column++) {
                double x = Math.clamp((column + 0.5) * across - 0.5, 0, coarse.columns - 1.0);
                set(column, row, (int) Math.floor(coarse.between(x, y) + 0.5));
            }
        }
    }

    private double between(double x, double y) {
        int left = (int) x;
        int upper = (int) y;
        int right = Math.min(left + 1, columns - 1);
        int lower = Math.min(upper + 1, rows - 1);
        double above = get(left, upper) + (x - left) * (get(right, upper) - get(left, upper));
        double below = get(left, lower) + (x - left) * (get(right, lower) - get(left, lower));
        return above + (y - upper) * (below - above);
    }
}
