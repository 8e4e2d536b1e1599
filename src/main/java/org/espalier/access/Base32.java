package org.espalier.access;

/** Bytes as letters and digits that are not taken for each other, as RFC 4648 section 6 has them, without padding. */
final class Base32 {

    private static final String SIGNS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
    private static final int BITS = 5;

    private Base32() {}

    static String of(byte[] bytes) {
        var text = new StringBuilder();
        int kept = 0;
        int bits = 0;
        for (byte one : bytes) {
            kept = (kept << Byte.SIZE | one & 0xFF) & 0xFFFF;
            bits += Byte.SIZE;
            while (bits >= BITS) {
                bits -= BITS;
                text.append(SIGNS.charAt(kept >> bits & 0x1F));
            }
        }
        return bits == 0
                ? text.toString()
                : text.append(SIGNS.charAt(kept << BITS - bits & 0x1F)).toString();
    }
}
