package org.espalier.film.internal.dicom.codec;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/** The markers and marker segments of a code stream of the JPEG family (T.81 section B.1.1). */
final class JpegSegments {

    private final byte[] data;
    private int position;

    JpegSegments(ByteBuffer stream) {
        data = new byte[stream.remaining()];
        stream.get(data);
    }

    /** The next marker, whatever stands before it passed over. */
    int marker() throws CodeStreamException {
        while (position + 1 < data.length) {
            int code = data[position + 1] & 0xFF;
            if ((data[position] & 0xFF) == 0xFF && code != 0 && code != 0xFF && (code & 0xF8) != 0xD0) {
                position += 2;
                return code;
            }
            position++;
        }
        throw new CodeStreamException("the code stream ends before the picture does");
    }

    /** The segment that follows the marker just read. */
    Segment segment() throws CodeStreamException {
        Segment length = new Segment(position, Math.min(position + 2, data.length));
        int end = position + Math.max(2, length.unsignedShort());
        if (end > data.length) {
            throw new CodeStreamException("the code stream ends within a marker segment");
        }
        Segment segment = new Segment(position + 2, end);
        position = end;
        return segment;
    }

    /** The entropy-coded data that follow the segment just read. */
    EntropyReader entropy() {
        return new EntropyReader(data, position);
    }

    /** The same for JPEG-LS, which stuffs bits instead of bytes. */
    JpegLsReader lossless() {
        return new JpegLsReader(data, position);
    }

    void continueAt(int place) {
        position = place;
    }

    /** The parameters of a marker. */
    final class Segment {

        private int at;
        private final int end;

        private Segment(int start, int end) {
            this.at = start;
            this.end = end;
        }

        boolean hasMore() {
            return at < end;
        }

        int unsignedByte() throws CodeStreamException {
            if (at >= end) {
                throw new CodeStreamException("a marker segment is too short");
            }
            return data[at++] & 0xFF;
        }

        int unsignedShort() throws CodeStreamException {
            return unsignedByte() << 8 | unsignedByte();
        }

        byte[] bytes(int count) throws CodeStreamException {
            byte[] bytes = new byte[count];
            for (int i = 0; i < count; i++) {
                bytes[i] = (byte) unsignedByte();
            }
            return bytes;
        }

        /** A frame header (T.81 section B.2.2). */
        JpegFrame frame(boolean lossless) throws CodeStreamException {
            int precision = unsignedByte();
            int rows = unsignedShort();
            int columns = unsignedShort();
            int count = unsignedByte();
            List<JpegFrame.Component> components = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                int id = unsignedByte();
                int sampling = unsignedByte();
                components.add(new JpegFrame.Component(id, sampling >>> 4, sampling & 15, unsignedByte()));
            }
            JpegFrame frame = new JpegFrame(lossless, precision, columns, rows, List.copyOf(components));
            if (!isSound(frame)) {
                throw new CodeStreamException("a frame header that no process allows");
            }
            return frame;
        }

        private static boolean isSound(JpegFrame frame) {
            boolean precise = frame.lossless()
                    ? frame.precision() >= 2 && frame.precision() <= 16
                    : frame.precision() == 8 || frame.precision() == 12;
            boolean full = frame.components().stream().allMatch(part -> part.horizontal() == 1 && part.vertical() == 1);
            boolean sampled = frame.components().stream()
                    .allMatch(part -> part.horizontal() >= 1
                            && part.horizontal() <= 4
                            && part.vertical() >= 1
                            && part.vertical() <= 4);
            return precise && sampled && (full || !frame.lossless());
        }
    }
}
