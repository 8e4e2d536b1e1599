package org.espalier.demo.drawn;

/**
 * How a drawn film's elements and pixels are written.
 *
 * <p>Source: PS3.5, Annex A (transfer syntaxes), from memory; read back by independent programs in the tests.
 */
public enum FilmEncoding {
    /** Explicit little endian. */
    EXPLICIT("1.2.840.10008.1.2.1"),
    /** Implicit little endian. */
    IMPLICIT("1.2.840.10008.1.2"),
    /** Explicit little endian, the data set deflated as a whole. */
    DEFLATED("1.2.840.10008.1.2.1.99"),
    /** Run-length coded pixels. */
    RUN_LENGTH("1.2.840.10008.1.2.5");

    private final String uid;

    FilmEncoding(String uid) {
        this.uid = uid;
    }

    String uid() {
        return uid;
    }
}
