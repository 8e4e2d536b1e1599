package org.espalier.film;

import org.espalier.film.internal.dicom.Refusal;

/** What the reader's refusals mean to the person who sent the film. */
final class Refusals {

    private Refusals() {}

    static AsideReason reason(Refusal refusal) {
        return switch (refusal) {
            case TRUNCATED -> AsideReason.CUT_SHORT;
            case NOT_DICOM, MALFORMED, UNREADABLE, TRANSFER_SYNTAX_MISSING -> AsideReason.BROKEN;
            case FILE_TOO_LARGE, INFLATES_TOO_FAR, NESTED_TOO_DEEP, TOO_MANY_ELEMENTS -> AsideReason.UNSAFE;
            case TRANSFER_SYNTAX_UNSUPPORTED -> AsideReason.ENCODING_UNKNOWN;
            case NO_PIXEL_DATA -> AsideReason.NO_PICTURE;
            case PIXELS_DESCRIBED_WRONGLY, PIXEL_DATA_SHORT -> AsideReason.PICTURE_CONTRADICTS;
            case PIXELS_UNSUPPORTED -> AsideReason.PICTURE_KIND_UNKNOWN;
            case TOO_MANY_PIXELS -> AsideReason.TOO_MANY_PIXELS;
            case CODE_STREAM_BROKEN -> AsideReason.PICTURE_DAMAGED;
        };
    }
}
