package org.espalier.film.internal.dicom.codec;

import java.util.Arrays;

/** A Huffman table, spread over all 16-bit beginnings of the bit stream (T.81 annex C). */
final class HuffmanTable {

    private static final int LONGEST = 16;

    /** Length of the code in the upper, symbol in the lower byte; 0 where no code begins so. */
    private final short[] codes = new short[1 << LONGEST];

    /**
     * @param counts how many codes have 1, 2, … 16 bits
     * @param symbols their symbols in order
     */
    HuffmanTable(int[] counts, byte[] symbols) throws CodeStreamException {
        int from = 0;
        int symbol = 0;
        for (int length = 1; length <= LONGEST; length++) {
            for (int i = 0; i < counts[length - 1]; i++) {
                int to = from + (1 << (LONGEST - length));
                if (to > codes.length) {
                    throw new CodeStreamException("a Huffman table has more codes than fit");
                }
                short code = (short) (length << 8 | symbols[symbol++] & 0xFF);
                Arrays.fill(codes, from, to, code);
                from = to;
            }
        }
    }

    int decode(EntropyReader reader) throws CodeStreamException {
        int code = codes[reader.peek16()];
        if (code == 0) {
            throw new CodeStreamException("no Huffman code begins like this");
        }
        reader.skip(code >>> 8);
        return code & 0xFF;
    }
}
