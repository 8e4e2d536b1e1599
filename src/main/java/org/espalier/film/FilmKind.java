package org.espalier.film;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** What kind of file a film came as, told by its first bytes and not by its name. */
public enum FilmKind {
    DICOM,
    PHOTO;

    /** So many bytes tell the kind. */
    static final int TELLING_BYTES = 132;

    private static final int PREFIX_AT = 128;
    private static final byte[] PREFIX = "DICM".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    static Optional<FilmKind> of(byte[] start) {
        if (stands(PREFIX, start, PREFIX_AT)) {
            return Optional.of(DICOM);
        }
        return stands(JPEG, start, 0) || stands(PNG, start, 0) ? Optional.of(PHOTO) : Optional.empty();
    }

    private static boolean stands(byte[] mark, byte[] start, int at) {
        return start.length >= at + mark.length && Arrays.equals(mark, 0, mark.length, start, at, at + mark.length);
    }
}
