package org.espalier.film.tiles;

/** The shade, 0 black to 255 white, of every stored value a grey picture can have. */
public final class Shades {

    /** For pictures in colours, which need none. */
    public static final Shades NONE = new Shades(new byte[0]);

    private static final int VALUES = 1 << 16;

    private final byte[] table;

    private Shades(byte[] table) {
        this.table = table;
    }

    /**
     * Takes a table over, without copying.
     *
     * @param table the shade of each of the 65,536 bit patterns of a sample
     */
    public static Shades of(byte[] table) {
        if (table.length != VALUES) {
            throw new IllegalArgumentException("a table of " + table.length + " shades");
        }
        return new Shades(table);
    }

    byte of(int pattern) {
        return table[pattern & 0xFFFF];
    }
}
