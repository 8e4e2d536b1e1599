package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import org.espalier.film.internal.dicom.codec.CodeStreamException;
import org.espalier.film.internal.dicom.codec.Jpeg2000Decoder;
import org.espalier.film.internal.dicom.codec.JpegDecoder;
import org.espalier.film.internal.dicom.codec.JpegLsDecoder;
import org.espalier.film.internal.dicom.codec.RleDecoder;

/**
 * Decodes the first frame of a file into stored values, or says why it cannot. Decoders are fenced in: whatever one
 * throws becomes a refusal.
 */
public final class PixelDecoder {

    private static final Tag FLOAT_PIXEL_DATA = new Tag(0x7FE00008);
    private static final Tag DOUBLE_PIXEL_DATA = new Tag(0x7FE00009);

    static final String OUT_OF_MEMORY = "decoding needs more memory than is free";

    private PixelDecoder() {}

    public static Decoded decode(DicomFile file, Limits limits) {
        try {
            Element pixels = pixelData(file.dataSet());
            PixelDescription description = PixelDescription.of(file.dataSet(), limits);
            short[] patterns = file.transferSyntax().isEncapsulated()
                    ? decompress(file, description, pixels)
                    : NativePixels.decode(description, pixels);
            mask(patterns, description);
            return new StoredImage(description, patterns);
        } catch (RefusedException e) {
            return new Decoded.Refused(e.reason(), e.detail());
        }
    }

    private static Element pixelData(DataSet dataSet) throws RefusedException {
        if (dataSet.element(FLOAT_PIXEL_DATA).isPresent()
                || dataSet.element(DOUBLE_PIXEL_DATA).isPresent()) {
            throw new RefusedException(Refusal.PIXELS_UNSUPPORTED, "floating-point pixels");
        }
        return dataSet.element(Tag.PIXEL_DATA)
                .orElseThrow(() -> new RefusedException(Refusal.NO_PIXEL_DATA, "no pixel data"));
    }

    private static short[] decompress(DicomFile file, PixelDescription description, Element pixels)
            throws RefusedException {
        if (!(pixels.value() instanceof Element.Fragments fragments)) {
            throw new RefusedException(Refusal.PIXELS_DESCRIBED_WRONGLY, "a compressed file without fragments");
        }
        ByteBuffer stream = Frames.first(description, fragments);
        try {
            return decompress(file, description, stream);
        } catch (CodeStreamException e) {
            throw new RefusedException(Refusal.CODE_STREAM_BROKEN, String.valueOf(e.getMessage()));
        } catch (RuntimeException | StackOverflowError e) {
            String what = e.getClass().getSimpleName();
            throw new RefusedException(Refusal.CODE_STREAM_BROKEN, "the decoder gave up: " + what);
        } catch (OutOfMemoryError e) {
            throw new RefusedException(Refusal.TOO_MANY_PIXELS, OUT_OF_MEMORY);
        }
    }

    private static short[] decompress(DicomFile file, PixelDescription description, ByteBuffer stream)
            throws RefusedException, CodeStreamException {
        return switch (file.transferSyntax()) {
            case RLE_LOSSLESS -> RleDecoder.decode(stream, description.shape(), description.bytesAllocated());
            case JPEG_BASELINE, JPEG_EXTENDED, JPEG_LOSSLESS, JPEG_LOSSLESS_FIRST_ORDER ->
                JpegDecoder.decode(stream, description.shape());
            case JPEG_LS_LOSSLESS, JPEG_LS_NEAR_LOSSLESS -> JpegLsDecoder.decode(stream, description.shape());
            case JPEG_2000_LOSSLESS, JPEG_2000 -> Jpeg2000Decoder.decode(stream, description.shape());
            default ->
                throw new RefusedException(
                        Refusal.TRANSFER_SYNTAX_UNSUPPORTED,
                        "transfer syntax "
                                + file.meta().string(Tag.TRANSFER_SYNTAX_UID).orElse(""));
        };
    }

    /** Keeps the stored bits and spreads the sign (PS3.5 section 8.1.1). */
    private static void mask(short[] patterns, PixelDescription description) {
        int up = 31 - description.highBit();
        int down = 32 - description.bitsStored();
        for (int i = 0; i < patterns.length; i++) {
            int raised = patterns[i] << up;
            patterns[i] = (short) (description.signed() ? raised >> down : raised >>> down);
        }
    }
}
