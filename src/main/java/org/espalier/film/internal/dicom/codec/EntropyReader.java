package org.espalier.film.internal.dicom.codec;

/** The bits of entropy-coded segments, without stuffed bytes and up to the next marker (T.81 section F.2.2.5). */
final class EntropyReader {

    private static final int MARKER = 0xFF;
    private static final int RESTART = 0xD0;

    private final byte[] data;
    private int position;
    private long window;
    private int available;
    private boolean atMarker;

    EntropyReader(byte[] data, int position) {
        this.data = data;
        this.position = position;
    }

    /** A place from which the next marker is found by looking forward. */
    int position() {
        return position;
    }

    /** The next 16 bits, zeros where the segment has ended. */
    int peek16() {
        if (available < 16) {
            fill();
        }
        return (int) (available >= 16 ? window >>> (available - 16) : window << (16 - available)) & 0xFFFF;
    }

    void skip(int bits) throws CodeStreamException {
        if (bits > available) {
            throw new CodeStreamException("the compressed data end before the picture does");
        }
        available -= bits;
    }

    /** Up to 16 bits as a number. */
    int bits(int count) throws CodeStreamException {
        int value = peek16() >>> (16 - count);
        skip(count);
        return value;
    }

    /** The difference of a magnitude category: RECEIVE and EXTEND of T.81 section F.2.2.1. */
    int difference(int category) throws CodeStreamException {
        if (category == 0) {
            return 0;
        }
        int value = bits(category);
        return value < 1 << (category - 1) ? value - (1 << category) + 1 : value;
    }

    /** Drops the rest of the interval and passes the restart marker with this number (T.81 section E.2.4). */
    void restart(int number) throws CodeStreamException {
        int at = position;
        while (at + 1 < data.length && (data[at] & 0xFF) == MARKER && (data[at + 1] & 0xFF) == MARKER) {
            at++;
        }
        if (at + 1 >= data.length || (data[at] & 0xFF) != MARKER || (data[at + 1] & 0xFF) != RESTART + number % 8) {
            throw new CodeStreamException("a restart marker is missing");
        }
        position = at + 2;
        window = 0;
        available = 0;
        atMarker = false;
    }

    private void fill() {
        while (available <= 48 && !atMarker) {
            if (position >= data.length) {
                atMarker = true;
                return;
            }
            int next = data[position] & 0xFF;
            if (next == MARKER) {
                if (position + 1 >= data.length || data[position + 1] != 0) {
                    atMarker = true;
                    return;
                }
                position++;
            }
            position++;
            window = window << 8 | next;
            available += 8;
        }
    }
}
