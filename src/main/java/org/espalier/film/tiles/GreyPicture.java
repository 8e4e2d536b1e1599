package org.espalier.film.tiles;

import java.nio.ByteBuffer;

/**
 * A picture of 16-bit stored values.
 *
 * @param width pixels
 * @param height pixels
 * @param signed whether a sample is two's complement; otherwise it is {@code sample & 0xFFFF}
 * @param samples one a pixel; not copied
 */
public record GreyPicture(int width, int height, boolean signed, short[] samples) implements Picture {

    public GreyPicture {
        if (width < 1 || height < 1 || samples.length != width * height) {
            throw new IllegalArgumentException(samples.length + " samples for " + width + " x " + height);
        }
    }

    GreyPicture(int width, int height, boolean signed) {
        this(width, height, signed, new short[width * height]);
    }

    /** The stored value of a sample. */
    public int value(int index) {
        return signed ? samples[index] : samples[index] & 0xFFFF;
    }

    @Override
    public GreyPicture halved() {
        var half = new GreyPicture((width + 1) / 2, (height + 1) / 2, signed);
        for (int y = 0; y < half.height; y++) {
            int upper = 2 * y * width;
            int lower = Math.min(2 * y + 1, height - 1) * width;
            for (int x = 0; x < half.width; x++) {
                int left = 2 * x;
                int right = Math.min(left + 1, width - 1);
                int sum = value(upper + left) + value(upper + right) + value(lower + left) + value(lower + right);
                half.samples[y * half.width + x] = (short) (sum + 2 >> 2);
            }
        }
        return half;
    }

    @Override
    public void copyTo(ByteBuffer target, Part part) {
        var shorts = target.asShortBuffer();
        for (int y = part.y(); y < part.y() + part.height(); y++) {
            shorts.put(samples, y * width + part.x(), part.width());
        }
    }

    @Override
    public void copyFrom(ByteBuffer source, Part part) {
        var shorts = source.asShortBuffer();
        for (int y = part.y(); y < part.y() + part.height(); y++) {
            shorts.get(samples, y * width + part.x(), part.width());
        }
    }
}
