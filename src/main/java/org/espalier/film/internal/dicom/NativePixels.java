package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import org.espalier.film.internal.dicom.codec.Shape;

/** Pixel data that is not compressed (PS3.5 section 8.1 and annexes A.1 to A.3, D). */
final class NativePixels {

    private final PixelDescription description;
    private final ByteBuffer bytes;
    private final boolean swapped;

    private NativePixels(PixelDescription description, ByteBuffer bytes, boolean swapped) {
        this.description = description;
        this.bytes = bytes;
        this.swapped = swapped;
    }

    /** The bit patterns of the first frame, interleaved by pixel. */
    static short[] decode(PixelDescription description, Element element) throws RefusedException {
        if (!(element.value() instanceof Element.Bytes value)) {
            throw new RefusedException(Refusal.PIXELS_DESCRIBED_WRONGLY, "fragments in an uncompressed file");
        }
        ByteBuffer bytes = value.bytes();
        long needed = bytesOfFrame(description);
        if (bytes.remaining() < needed) {
            throw new RefusedException(
                    Refusal.PIXEL_DATA_SHORT, bytes.remaining() + " bytes of pixels, " + needed + " needed");
        }
        boolean swapped =
                description.bitsAllocated() == 8 && element.vr() == Vr.OW && bytes.order() == ByteOrder.BIG_ENDIAN;
        NativePixels pixels = new NativePixels(description, bytes, swapped);
        return description.halfColour() ? pixels.halfColour() : pixels.wholeSamples();
    }

    /** Half colour needs four bytes for two pixels, and an even number of columns (PS3.3 section C.7.6.3.1.2). */
    private static long bytesOfFrame(PixelDescription description) throws RefusedException {
        Shape shape = description.shape();
        if (!description.halfColour()) {
            return (long) shape.samples() * description.bytesAllocated();
        }
        if (description.bitsAllocated() != 8 || shape.columns() % 2 != 0) {
            throw new RefusedException(Refusal.PIXELS_DESCRIBED_WRONGLY, "YBR_FULL_422 with odd columns or 16 bits");
        }
        return 2L * shape.pixels();
    }

    private short[] wholeSamples() {
        Shape shape = description.shape();
        short[] samples = new short[shape.samples()];
        int components = shape.components();
        if (components == 1 || !description.planar()) {
            for (int i = 0; i < samples.length; i++) {
                samples[i] = sample(i);
            }
            return samples;
        }
        for (int i = 0; i < samples.length; i++) {
            samples[i] = sample(i % components * shape.pixels() + i / components);
        }
        return samples;
    }

    /** Y, Y, Cb, Cr for each two pixels; the colour belongs to both. */
    private short[] halfColour() {
        short[] samples = new short[description.shape().samples()];
        for (int pixel = 0; pixel < description.shape().pixels(); pixel++) {
            int pair = pixel / 2 * 4;
            samples[3 * pixel] = sample(pair + pixel % 2);
            samples[3 * pixel + 1] = sample(pair + 2);
            samples[3 * pixel + 2] = sample(pair + 3);
        }
        return samples;
    }

    /** Bytes written as 16-bit words stand in the order of the words (PS3.5 section 8.1.2). */
    private short sample(int index) {
        if (description.bitsAllocated() == 16) {
            return bytes.getShort(2 * index);
        }
        return (short) (bytes.get(swapped ? index ^ 1 : index) & 0xFF);
    }
}
