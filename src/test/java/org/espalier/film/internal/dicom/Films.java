package org.espalier.film.internal.dicom;

import java.nio.file.Path;

/** Reads and decodes films that a test expects to be good. */
final class Films {

    private Films() {}

    static DicomFile read(Path file) {
        return good(DicomReader.read(file, Limits.STANDARD));
    }

    static DicomFile good(ReadResult result) {
        return switch (result) {
            case ReadResult.Read(DicomFile film) -> film;
            case ReadResult.Refused(Refusal reason, String detail) -> throw new AssertionError(reason + ": " + detail);
        };
    }

    static StoredImage decoded(DicomFile film) {
        return switch (PixelDecoder.decode(film, Limits.STANDARD)) {
            case StoredImage image -> image;
            case Decoded.Refused(Refusal reason, String detail) -> throw new AssertionError(reason + ": " + detail);
        };
    }
}
