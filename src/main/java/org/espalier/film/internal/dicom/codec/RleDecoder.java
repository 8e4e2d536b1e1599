package org.espalier.film.internal.dicom.codec;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Run-length decoding: byte planes in PackBits segments (PS3.5 annex G). */
public final class RleDecoder {

    private static final int HEADER = 64;
    private static final int MOST_SEGMENTS = 15;

    private final ByteBuffer stream;
    private final Shape shape;
    private final short[] samples;

    private RleDecoder(ByteBuffer stream, Shape shape) {
        this.stream = stream;
        this.shape = shape;
        this.samples = new short[shape.samples()];
    }

    /**
     * @param bytesPerSample 1 or 2
     * @return the samples interleaved by pixel, as bit patterns
     */
    public static short[] decode(ByteBuffer stream, Shape shape, int bytesPerSample) throws CodeStreamException {
        ByteBuffer bytes = stream.slice().order(ByteOrder.LITTLE_ENDIAN);
        int segments = shape.components() * bytesPerSample;
        if (bytes.remaining() < HEADER || bytes.getInt(0) != segments || segments > MOST_SEGMENTS) {
            throw new CodeStreamException("the run-length header does not announce " + segments + " segments");
        }
        RleDecoder decoder = new RleDecoder(bytes, shape);
        for (int segment = 0; segment < segments; segment++) {
            decoder.segment(segment, segments, bytesPerSample);
        }
        return decoder.samples;
    }

    /** Segments stand sample by sample, the more significant byte first (annex G.2). */
    private void segment(int segment, int segments, int bytesPerSample) throws CodeStreamException {
        int component = segment / bytesPerSample;
        int shift = 8 * (bytesPerSample - 1 - segment % bytesPerSample);
        long start = offset(segment);
        long end = segment + 1 < segments ? offset(segment + 1) : stream.limit();
        if (start < HEADER || start > end || end > stream.limit()) {
            throw new CodeStreamException("run-length segment " + segment + " lies outside the frame");
        }
        unpack(stream.slice((int) start, (int) (end - start)), component, shift);
    }

    private long offset(int segment) {
        return Integer.toUnsignedLong(stream.getInt(4 + 4 * segment));
    }

    /** The decoder of annex G.3.2. */
    private void unpack(ByteBuffer segment, int component, int shift) throws CodeStreamException {
        int step = shape.components();
        int at = component;
        while (at < samples.length) {
            int code = next(segment);
            if (code >= 0) {
                for (int i = 0; i <= code && at < samples.length; i++, at += step) {
                    samples[at] |= (short) ((next(segment) & 0xFF) << shift);
                }
            } else if (code != Byte.MIN_VALUE) {
                int value = (next(segment) & 0xFF) << shift;
                for (int i = 0; i <= -code && at < samples.length; i++, at += step) {
                    samples[at] |= (short) value;
                }
            }
        }
    }

    private static byte next(ByteBuffer segment) throws CodeStreamException {
        if (!segment.hasRemaining()) {
            throw new CodeStreamException("a run-length segment ends before its last pixel");
        }
        return segment.get();
    }
}
