package org.espalier.film.internal.dicom.codec;

import com.github.jaiimageio.jpeg2000.impl.J2KImageReader;
import com.github.jaiimageio.jpeg2000.impl.J2KImageReaderSpi;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.ByteBuffer;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** Decodes JPEG 2000 code streams (ITU-T T.800) by a library that is kept from trusting them. */
public final class Jpeg2000Decoder {

    private Jpeg2000Decoder() {}

    /** The samples interleaved by pixel, colour transforms undone, as bit patterns. */
    public static short[] decode(ByteBuffer stream, Shape shape) throws CodeStreamException {
        byte[] bytes = new byte[stream.remaining()];
        stream.get(bytes);
        Jpeg2000Structure.check(bytes, shape);
        ImageReader reader = new J2KImageReader(new J2KImageReaderSpi());
        try (ImageInputStream input = new StrictInput(bytes)) {
            reader.setInput(input, true, true);
            return samples(reader.readRaster(0, null), shape);
        } catch (OutOfMemoryError e) {
            throw e;
        } catch (IOException | RuntimeException | Error e) { // the library throws bare errors at broken streams
            throw new CodeStreamException("the JPEG 2000 code stream is broken");
        } finally {
            reader.dispose();
        }
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
