package org.espalier.film;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;

/** What kind of file a photo or clip is, told by its first bytes and not by its name. */
public enum PictureKind {
    JPEG("image/jpeg"),
    PNG("image/png"),
    MP4("video/mp4"),
    WEBM("video/webm");

    /** So many bytes tell the kind. */
    static final int TELLING_BYTES = 64;

    private static final byte[] JPEG_MARK = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};
    private static final byte[] PNG_MARK = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte[] EBML_MARK = {0x1A, 0x45, (byte) 0xDF, (byte) 0xA3};
    private static final String BOX = "ftyp";
    private static final int BOX_AT = 4;
    private static final int BRAND_AT = 8;
    private static final Pattern MP4_BRANDS = Pattern.compile("iso[2-9m]|mp4[12]|avc1|M4V |dash");

    private final String mediaType;

    PictureKind(String mediaType) {
        this.mediaType = mediaType;
    }

    /** As it is named to a browser. */
    public String mediaType() {
        return mediaType;
    }

    /** Whether it moves. */
    public boolean isClip() {
        return this == MP4 || this == WEBM;
    }

    static Optional<PictureKind> of(byte[] start) {
        if (begins(JPEG_MARK, start)) {
            return Optional.of(JPEG);
        }
        if (begins(PNG_MARK, start)) {
            return Optional.of(PNG);
        }
        var text = new String(start, StandardCharsets.ISO_8859_1);
        if (begins(EBML_MARK, start)) {
            return text.contains("webm") ? Optional.of(WEBM) : Optional.empty();
        }
        return text.startsWith(BOX, BOX_AT)
                        && MP4_BRANDS.matcher(text.substring(BRAND_AT)).lookingAt()
                ? Optional.of(MP4)
                : Optional.empty();
    }

    private static boolean begins(byte[] mark, byte[] start) {
        return start.length >= mark.length && Arrays.equals(mark, 0, mark.length, start, 0, mark.length);
    }
}
