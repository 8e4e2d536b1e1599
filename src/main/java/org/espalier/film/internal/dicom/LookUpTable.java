package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.Optional;

/**
 * A look-up table of the standard: below its first value its first entry holds, beyond its end its last (PS3.3 sections
 * C.11.1.1, C.11.2.1.1 and C.7.6.3.1.5).
 */
final class LookUpTable {

    private static final int MOST = 65536;

    private final int first;
    private final int bits;
    private final char[] entries;

    private LookUpTable(int first, int bits, char[] entries) {
        this.first = first;
        this.bits = bits;
        this.entries = entries;
    }

    /**
     * The table with this descriptor and data.
     *
     * @param signed whether the values looked up are signed, and so the first value of the descriptor
     * @return empty when it is missing or shorter than described
     */
    static Optional<LookUpTable> of(DataSet dataSet, Tag descriptor, Tag data, boolean signed) {
        List<Long> described = dataSet.integers(descriptor);
        Optional<ByteBuffer> bytes = dataSet.bytes(data);
        if (described.size() != 3 || bytes.isEmpty()) {
            return Optional.empty();
        }
        int count = described.get(0) == 0 ? MOST : described.get(0).intValue() & 0xFFFF;
        int first = described.get(1).intValue();
        int bits = described.get(2).intValue();
        if (bits < 1 || bits > 16) {
            return Optional.empty();
        }
        return entries(bytes.get(), count, bits)
                .map(entries -> new LookUpTable(signed ? (short) first : first & 0xFFFF, bits, entries));
    }

    /** Eight-bit entries stand in bytes or, as the standard has it for LUT Data, in 16-bit words. */
    private static Optional<char[]> entries(ByteBuffer bytes, int count, int bits) {
        boolean words = bytes.remaining() >= 2 * count;
        if (!words && (bits > 8 || bytes.remaining() < count)) {
            return Optional.empty();
        }
        char[] entries = new char[count];
        int mask = (1 << bits) - 1;
        for (int i = 0; i < count; i++) {
            entries[i] = (char) ((words ? bytes.getChar(2 * i) : bytes.get(i)) & mask);
        }
        return Optional.of(entries);
    }

    /** Number of entries, first value looked up, bits of an entry. */
    int[] descriptor() {
        return new int[] {entries.length == MOST ? 0 : entries.length, first, bits};
    }

    /** The entries alone, in their order. */
    int[] data() {
        return new String(entries).chars().toArray();
    }

    int entry(double value) {
        double index = Math.rint(value) - first;
        return entries[(int) Math.clamp(index, 0, entries.length - 1)];
    }

    /** The entry as a part of the greatest one its bits can hold. */
    double part(double value) {
        return (double) entry(value) / ((1 << bits) - 1);
    }
}
