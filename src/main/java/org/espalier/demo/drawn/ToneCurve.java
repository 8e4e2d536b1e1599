package org.espalier.demo.drawn;

/**
 * From what the rays lost on their way to 12-bit stored values, as a digital detector with its usual processing does.
 */
final class ToneCurve {

    /** How much of the difference between thick and thin parts is evened out, so that hip and ankle show together. */
    private static final double EVENING = 0.75;

    private static final double USUAL_LOSS = 1.6;
    private static final double LEAST_LOSS = 0.5;
    private static final double STEP = 1 / 1000.0;
    private static final int FLOOR = 180;
    private static final int TOP = 4095;

    private ToneCurve() {}

    static short[] stored(float[] loss, int width, int height, double mmPerPixel) {
        int cell = Math.max(1, (int) Math.round(4 / mmPerPixel));
        SlowField gain = SlowField.of(loss, width, height, cell, (int) Math.round(26 / (cell * mmPerPixel)));
        short[] stored = new short[loss.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int i = y * width + x;
                double even = loss[i] * gain.at(x, y);
                stored[i] = (short) Math.clamp(Math.round(FLOOR + soft(even) / STEP), 0, TOP);
            }
        }
        return stored;
    }

    /** What a viewer should start with. */
    record Window(int centre, int width) {}

    /** From dark flesh to the densest bone, metal left out. */
    static Window window(short[] stored) {
        int[] counts = new int[TOP + 1];
        int body = 0;
        for (short value : stored) {
            if (value > FLOOR + 350 && value < FLOOR + 2600) {
                counts[value]++;
                body++;
            }
        }
        int bright = FLOOR + 2600;
        for (int above = 0; above < body / 250; bright--) {
            above += counts[bright];
        }
        int middle = FLOOR + 350;
        for (int below = 0; below < body / 2; middle++) {
            below += counts[middle];
        }
        int dark = FLOOR + 300 + (middle - FLOOR) / 5;
        return new Window((dark + bright) / 2, bright - dark);
    }

    /** Straight up to dense bone, then bending so that metal is not cut off hard. */
    private static double soft(double value) {
        return value < 2.4 ? value : 2.4 + 1.2 * Math.tanh((value - 2.4) / 1.2);
    }

    /** The gain that evens out the loss averaged over some cm, kept coarse and read back smoothly. */
    private record SlowField(float[] cells, int columns, int rows, int cell) {

        static SlowField of(float[] field, int width, int height, int cell, int reach) {
            int columns = (width + cell - 1) / cell;
            int rows = (height + cell - 1) / cell;
            float[] cells = new float[columns * rows];
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    int x = Math.min(width - 1, column * cell + cell / 2);
                    int y = Math.min(height - 1, row * cell + cell / 2);
                    cells[row * columns + column] = Math.min(4.5f, field[y * width + x]);
                }
            }
            for (int pass = 0; pass < 2; pass++) {
                cells = averaged(cells, columns, rows, reach, true);
                cells = averaged(cells, columns, rows, reach, false);
            }
            for (int i = 0; i < cells.length; i++) {
                cells[i] = (float) Math.pow(USUAL_LOSS / (LEAST_LOSS + cells[i]), EVENING);
            }
            return new SlowField(cells, columns, rows, cell);
        }

        private static float[] averaged(float[] cells, int columns, int rows, int reach, boolean across) {
            float[] out = new float[cells.length];
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    double sum = 0;
                    for (int step = -reach; step <= reach; step++) {
                        int c = across ? Math.clamp(column + step, 0, columns - 1) : column;
                        int r = across ? row : Math.clamp(row + step, 0, rows - 1);
                        sum += cells[r * columns + c];
                    }
                    out[row * columns + column] = (float) (sum / (2 * reach + 1));
                }
            }
            return out;
        }

        double at(int x, int y) {
            double fx = Math.clamp((x - cell / 2) / (double) cell, 0, columns - 1.001);
            double fy = Math.clamp((y - cell / 2) / (double) cell, 0, rows - 1.001);
            int column = (int) fx;
            int row = (int) fy;
            int right = Math.min(columns - 1, column + 1);
            int below = Math.min(rows - 1, row + 1);
            double tx = fx - column;
            double ty = fy - row;
            double upper = cells[row * columns + column] * (1 - tx) + cells[row * columns + right] * tx;
            double lower = cells[below * columns + column] * (1 - tx) + cells[below * columns + right] * tx;
            return upper * (1 - ty) + lower * ty;
        }
    }
}
