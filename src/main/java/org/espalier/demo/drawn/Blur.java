package org.espalier.demo.drawn;

/** The detector's blur, and the noise of the few quanta that arrive behind thick parts. */
final class Blur {

    private Blur() {}

    /**
     * @param sigma of the blur, pixels
     * @param quanta standard deviation of the noise where nothing lies in the way
     */
    static float[] withQuanta(float[] loss, int width, int height, double sigma, double quanta, long seed) {
        for (int i = 0; i < loss.length; i++) {
            double starved = Math.exp(Math.min(6, loss[i]) / 2);
            loss[i] += (float) (quanta * starved * Grain.quantum(i, seed));
        }
        float[] kernel = kernel(sigma);
        return columns(rows(loss, width, height, kernel), width, height, kernel);
    }

    private static float[] kernel(double sigma) {
        int reach = Math.max(1, (int) Math.ceil(2.5 * sigma));
        float[] kernel = new float[2 * reach + 1];
        double sum = 0;
        for (int i = -reach; i <= reach; i++) {
            kernel[i + reach] = (float) Math.exp(-i * i / (2 * sigma * sigma));
            sum += kernel[i + reach];
        }
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] /= (float) sum;
        }
        return kernel;
    }

    private static float[] rows(float[] field, int width, int height, float[] kernel) {
        float[] out = new float[field.length];
        int reach = kernel.length / 2;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                float sum = 0;
                for (int k = -reach; k <= reach; k++) {
                    sum += kernel[k + reach] * field[y * width + Math.clamp(x + k, 0, width - 1)];
                }
                out[y * width + x] = sum;
            }
        }
        return out;
    }

    private static float[] columns(float[] field, int width, int height, float[] kernel) {
        float[] out = new float[field.length];
        int reach = kernel.length / 2;
        for (int y = 0; y < height; y++) {
            for (int k = -reach; k <= reach; k++) {
                int from = Math.clamp(y + k, 0, height - 1) * width;
                float weight = kernel[k + reach];
                for (int x = 0; x < width; x++) {
                    out[y * width + x] += weight * field[from + x];
                }
            }
        }
        return out;
    }
}
