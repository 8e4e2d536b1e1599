package org.espalier.demo.drawn;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * One frame of 16-bit pixels, run-length coded: the high bytes, then the low bytes, each row for itself.
 *
 * <p>Source: PS3.5, Annex G, from memory; read back by independent programs in the tests.
 */
final class RunLength {

    private static final int HEADER = 64;
    private static final int LONGEST = 128;

    private RunLength() {}

    static byte[] encode(short[] stored, int width) {
        byte[] high = segment(stored, width, 8);
        byte[] low = segment(stored, width, 0);
        return ByteBuffer.allocate(HEADER + high.length + low.length)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(2)
                .putInt(HEADER)
                .putInt(HEADER + high.length)
                .position(HEADER)
                .put(high)
                .put(low)
                .array();
    }

    /** A segment has an even number of bytes. */
    private static byte[] segment(short[] stored, int width, int shift) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] row = new byte[width];
        for (int start = 0; start < stored.length; start += width) {
            for (int i = 0; i < width; i++) {
                row[i] = (byte) (stored[start + i] >> shift);
            }
            row(row, out);
        }
        if (out.size() % 2 == 1) {
            out.write(0);
        }
        return out.toByteArray();
    }

    private static void row(byte[] row, ByteArrayOutputStream out) {
        int i = 0;
        while (i < row.length) {
            int run = run(row, i);
            if (run > 2) {
                out.write(1 - run);
                out.write(row[i]);
                i += run;
            } else {
                int literal = literal(row, i);
                out.write(literal - 1);
                out.write(row, i, literal);
                i += literal;
            }
        }
    }

    private static int run(byte[] row, int from) {
        int to = from + 1;
        while (to < row.length && to - from < LONGEST && row[to] == row[from]) {
            to++;
        }
        return to - from;
    }

    /** Bytes up to the next run worth coding. */
    private static int literal(byte[] row, int from) {
        int to = from + 1;
        while (to < row.length && to - from < LONGEST && run(row, to) < 3) {
            to++;
        }
        return to - from;
    }
}
