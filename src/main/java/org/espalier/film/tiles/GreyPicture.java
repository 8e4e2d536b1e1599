package org.espalier.film.tiles;

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

    /** All upper bytes, then all lower ones: apart they deflate better and inflate faster. */
    @Override
    public void pack(byte[] target, Part part) {
        int lower = part.width() * part.height();
        int i = 0;
        for (int y = part.y(); y < part.y() + part.height(); y++) {
            for (int x = part.x(); x < part.x() + part.width(); x++, i++) {
                short sample = samples[y * width + x];
                target[i] = (byte) (sample >> Byte.SIZE);
                target[lower + i] = (byte) sample;
            }
        }
    }

    @Override
    public void unpack(byte[] source) {
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (short) (source[i] << Byte.SIZE | source[samples.length + i] & 0xFF);
        }
    }

    @Override
    public void lay(Picture other, Part part, int x, int y) {
        var grey = (GreyPicture) other;
        for (int row = 0; row < part.height(); row++) {
            int from = (part.y() + row) * grey.width + part.x();
            System.arraycopy(grey.samples, from, samples, (y + row) * width + x, part.width());
        }
    }
}
