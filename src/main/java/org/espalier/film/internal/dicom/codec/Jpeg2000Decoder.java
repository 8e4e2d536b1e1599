package org.espalier.film.internal.dicom.codec;

import com.github.jaiimageio.jpeg2000.impl.J2KImageReader;
import com.github.jaiimageio.jpeg2000.impl.J2KImageReaderSpi;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Decodes JPEG 2000 code streams (ITU-T T.800) by a library, after a look at the header it would trust. */
public final class Jpeg2000Decoder {

    private static final int START_AND_SIZE = 0xFF4FFF51;
    private static final int HEADER = 42;
    private static final int MOST_TILES = 4096;

    private Jpeg2000Decoder() {}

    /** The samples interleaved by pixel, colour transforms undone, as bit patterns. */
    public static short[] decode(ByteBuffer stream, Shape shape) throws CodeStreamException {
        byte[] bytes = new byte[stream.remaining()];
        stream.get(bytes);
        check(ByteBuffer.wrap(bytes).order(ByteOrder.BIG_ENDIAN), shape);
        ImageReader reader = new J2KImageReader(new J2KImageReaderSpi());
        try (ImageInputStream input = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(input, true, true);
            return samples(reader.readRaster(0, null), shape);
        } catch (IOException e) {
            throw new CodeStreamException("the JPEG 2000 code stream is broken");
        } finally {
            reader.dispose();
        }
    }

    /** The SIZ marker segment (T.800 annex A.5.1). */
    private static void check(ByteBuffer stream, Shape shape) throws CodeStreamException {
        if (stream.remaining() < HEADER || stream.getInt(0) != START_AND_SIZE) {
            throw new CodeStreamException("not a JPEG 2000 code stream");
        }
        long columns = unsigned(stream, 8) - unsigned(stream, 16);
        long rows = unsigned(stream, 12) - unsigned(stream, 20);
        int components = Short.toUnsignedInt(stream.getShort(40));
        shape.require(
                (int) Math.clamp(columns, -1, Integer.MAX_VALUE),
                (int) Math.clamp(rows, -1, Integer.MAX_VALUE),
                components);
        long across = (columns + unsigned(stream, 24) - 1) / Math.max(1, unsigned(stream, 24));
        long down = (rows + unsigned(stream, 28) - 1) / Math.max(1, unsigned(stream, 28));
        if (across * down > MOST_TILES) {
            throw new CodeStreamException("more than " + MOST_TILES + " tiles");
        }
        for (int component = 0; component < components; component++) {
            checkComponent(stream, HEADER + 3 * component);
        }
    }

    private static void checkComponent(ByteBuffer stream, int at) throws CodeStreamException {
        if (stream.limit() < at + 3) {
            throw new CodeStreamException("not a JPEG 2000 code stream");
        }
        int precision = (stream.get(at) & 0x7F) + 1;
        if (precision > 16 || stream.get(at + 1) != 1 || stream.get(at + 2) != 1) {
            throw new CodeStreamException("samples of " + precision + " bits, or coarser than the picture");
        }
    }

    private static long unsigned(ByteBuffer stream, int at) {
        return Integer.toUnsignedLong(stream.getInt(at));
    }

    private static short[] samples(Raster raster, Shape shape) throws CodeStreamException {
        shape.require(raster.getWidth(), raster.getHeight(), raster.getNumBands());
        short[] samples = new short[shape.samples()];
        int[] line = new int[shape.columns() * shape.components()];
        for (int row = 0; row < shape.rows(); row++) {
            raster.getPixels(raster.getMinX(), raster.getMinY() + row, shape.columns(), 1, line);
            for (int i = 0; i < line.length; i++) {
                samples[row * line.length + i] = (short) line[i];
            }
        }
        return samples;
    }
}
