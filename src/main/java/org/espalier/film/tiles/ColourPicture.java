package org.espalier.film.tiles;

/**
 * A picture in 8-bit red, green and blue, as it is to be shown.
 *
 * @param width pixels
 * @param height pixels
 * @param samples three a pixel; not copied
 */
public record ColourPicture(int width, int height, byte[] samples) implements Picture {

    static final int CHANNELS = 3;

    public ColourPicture {
        if (width < 1 || height < 1 || samples.length != width * height * CHANNELS) {
            throw new IllegalArgumentException(samples.length + " samples for " + width + " x " + height);
        }
    }

    ColourPicture(int width, int height) {
        this(width, height, new byte[width * height * CHANNELS]);
    }

    int value(int x, int y, int channel) {
        return samples[(y * width + x) * CHANNELS + channel] & 0xFF;
    }

    @Override
    public ColourPicture halved() {
        var half = new ColourPicture((width + 1) / 2, (height + 1) / 2);
        int target = 0;
        for (int y = 0; y < half.height; y++) {
            int lower = Math.min(2 * y + 1, height - 1);
            for (int x = 0; x < half.width; x++) {
                int right = Math.min(2 * x + 1, width - 1);
                for (int c = 0; c < CHANNELS; c++) {
                    int sum = value(2 * x, 2 * y, c)
                            + value(right, 2 * y, c)
                            + value(2 * x, lower, c)
                            + value(right, lower, c);
                    half.samples[target++] = (byte) (sum + 2 >> 2);
                }
            }
        }
        return half;
    }

    @Override
    public void pack(byte[] target, Part part) {
        for (int row = 0; row < part.height(); row++) {
            int from = ((part.y() + row) * width + part.x()) * CHANNELS;
            System.arraycopy(samples, from, target, row * part.width() * CHANNELS, part.width() * CHANNELS);
        }
    }

    @Override
    public void unpack(byte[] source) {
        System.arraycopy(source, 0, samples, 0, samples.length);
    }

    @Override
    public void lay(Picture other, Part part, int x, int y) {
        var colour = (ColourPicture) other;
        for (int row = 0; row < part.height(); row++) {
            int from = ((part.y() + row) * colour.width + part.x()) * CHANNELS;
            System.arraycopy(
                    colour.samples, from, samples, ((y + row) * width + x) * CHANNELS, part.width() * CHANNELS);
        }
    }
}
