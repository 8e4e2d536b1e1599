package org.espalier.film.internal.dicom;

import java.util.OptionalInt;
import org.espalier.film.internal.dicom.codec.Shape;

/**
 * The image pixel module of a data set (PS3.3 section C.7.6.3), checked for sense.
 *
 * @param shape columns, rows and samples per pixel
 * @param bitsAllocated 8 or 16
 * @param bitsStored 1 to bits allocated
 * @param highBit the place of the highest stored bit
 * @param signed whether stored values are two's complement
 * @param planar whether uncompressed colours stand plane by plane
 * @param halfColour whether uncompressed colour differences stand once for two pixels
 * @param photometric what samples mean when decoded
 * @param frames the number of frames
 */
record PixelDescription(
        Shape shape,
        int bitsAllocated,
        int bitsStored,
        int highBit,
        boolean signed,
        boolean planar,
        boolean halfColour,
        Photometric photometric,
        int frames) {

    static PixelDescription of(DataSet dataSet, Limits limits) throws RefusedException {
        int allocated = number(dataSet, Tag.BITS_ALLOCATED);
        if (allocated != 8 && allocated != 16) {
            throw new RefusedException(Refusal.PIXELS_UNSUPPORTED, allocated + " bits allocated");
        }
        int stored = number(dataSet, Tag.BITS_STORED);
        int high = dataSet.integer(Tag.HIGH_BIT).orElse(stored - 1);
        if (stored < 1 || high < stored - 1 || high >= allocated) {
            throw wrong(stored + " bits stored up to bit " + high + " of " + allocated);
        }
        String declared = dataSet.string(Tag.PHOTOMETRIC_INTERPRETATION).orElse("");
        Photometric photometric = Photometric.ofDecoded(declared)
                .orElseThrow(() -> new RefusedException(
                        Refusal.PIXELS_UNSUPPORTED, "photometric interpretation '" + declared + "'"));
        return new PixelDescription(
                shape(dataSet, photometric, limits),
                allocated,
                stored,
                high,
                dataSet.integer(Tag.PIXEL_REPRESENTATION).orElse(0) == 1,
                dataSet.integer(Tag.PLANAR_CONFIGURATION).orElse(0) == 1,
                declared.equals("YBR_FULL_422"),
                photometric,
                frames(dataSet));
    }

    int bytesAllocated() {
        return bitsAllocated / 8;
    }

    private static Shape shape(DataSet dataSet, Photometric photometric, Limits limits) throws RefusedException {
        int columns = number(dataSet, Tag.COLUMNS);
        int rows = number(dataSet, Tag.ROWS);
        int samples = dataSet.integer(Tag.SAMPLES_PER_PIXEL).orElse(photometric.samples());
        if (columns < 1 || rows < 1 || samples != photometric.samples()) {
            throw wrong(columns + " x " + rows + " pixels of " + samples + " samples, " + photometric);
        }
        if ((long) columns * rows * samples > limits.samples()) {
            throw new RefusedException(
                    Refusal.TOO_MANY_PIXELS,
                    columns + " x " + rows + " pixels of " + samples + " samples, at most " + limits.samples());
        }
        return new Shape(columns, rows, samples);
    }

    private static int frames(DataSet dataSet) throws RefusedException {
        int frames = dataSet.integer(Tag.NUMBER_OF_FRAMES).orElse(1);
        if (frames < 1) {
            throw wrong(frames + " frames");
        }
        return frames;
    }

    private static int number(DataSet dataSet, Tag tag) throws RefusedException {
        OptionalInt number = dataSet.integer(tag);
        return number.orElseThrow(() -> wrong(tag + " is missing"));
    }

    private static RefusedException wrong(String detail) {
        return new RefusedException(Refusal.PIXELS_DESCRIBED_WRONGLY, detail);
    }
}
