package org.espalier.film.internal.dicom.codec;

/** The bits of a JPEG-LS scan: after a byte FF the next has seven (T.87 section 9.1 and annex A.1). */
final class JpegLsReader {

    private final byte[] data;
    private int position;
    private long window;
    private int available;
    private boolean afterMarkerByte;
    private boolean ended;

    JpegLsReader(byte[] data, int position) {
        this.data = data;
        this.position = position;
    }

    /** A place from which the next marker is found by looking forward. */
    int position() {
        return position;
    }

    boolean bit() throws CodeStreamException {
        return bits(1) == 1;
    }

    /** Up to 31 bits as a number. */
    int bits(int count) throws CodeStreamException {
        if (available < count) {
            fill();
            if (available < count) {
                throw ended();
            }
        }
        available -= count;
        return (int) (window >>> available) & (int) ((1L << count) - 1);
    }

    /** Counts zeros up to the next one and passes over it; more than the limit is an error. */
    int zeros(int limit) throws CodeStreamException {
        int zeros = 0;
        while (!bit()) {
            if (++zeros > limit) {
                throw new CodeStreamException("a code longer than the limit");
            }
        }
        return zeros;
    }

    private void fill() {
        while (available <= 48 && !ended) {
            int next = position < data.length ? data[position] & 0xFF : 0xFF;
            if (position >= data.length || (afterMarkerByte ? next > 0x7F : isMarker(next))) {
                ended = true;
                return;
            }
            int width = afterMarkerByte ? 7 : 8;
            window = window << width | next;
            available += width;
            afterMarkerByte = next == 0xFF;
            position++;
        }
    }

    private boolean isMarker(int next) {
        return next == 0xFF && (position + 1 >= data.length || (data[position + 1] & 0x80) != 0);
    }

    private static CodeStreamException ended() {
        return new CodeStreamException("the compressed data end before the picture does");
    }
}
