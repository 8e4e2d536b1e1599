package org.espalier.film;

import java.io.IOException;
import java.nio.file.Path;
import org.espalier.film.FilmInspector.Aside;
import org.espalier.film.internal.dicom.ColourImage;
import org.espalier.film.internal.dicom.DicomFile;
import org.espalier.film.internal.dicom.DicomReader;
import org.espalier.film.internal.dicom.Limits;
import org.espalier.film.internal.dicom.PixelDecoder;
import org.espalier.film.internal.dicom.ReadResult;
import org.espalier.film.internal.dicom.Refusal;
import org.espalier.film.internal.dicom.StoredImage;
import org.espalier.film.tiles.ColourPicture;
import org.espalier.film.tiles.GreyPicture;
import org.espalier.film.tiles.Picture;

/** From the bytes of a film to its pixels. */
final class FilmDecoder {

    private FilmDecoder() {}

    /** What came of decoding. */
    sealed interface Decoding {}

    /** The pixels, and how they become shades. */
    record Decoded(Picture picture, Look look) implements Decoding {}

    /** No pixels, and why. */
    record Undecodable(Aside aside) implements Decoding {}

    static Decoding decode(FilmKind kind, Path file) throws IOException {
        return switch (kind) {
            case DICOM -> dicom(file);
            case PHOTO -> photo(file);
        };
    }

    private static Decoding photo(Path file) {
        try {
            return new Decoded(Photos.read(file), Look.IN_COLOUR);
        } catch (IOException | RuntimeException e) {
            return new Undecodable(new Aside(AsideReason.PICTURE_DAMAGED, "the photo's pixels cannot be read"));
        }
    }

    private static Decoding dicom(Path file) {
        return switch (DicomReader.read(file, Limits.STANDARD)) {
            case ReadResult.Read(DicomFile dicom) -> dicom(dicom);
            case ReadResult.Refused(Refusal refusal, String detail) -> undecodable(refusal, detail);
        };
    }

    private static Decoding dicom(DicomFile dicom) {
        return switch (PixelDecoder.decode(dicom, Limits.STANDARD)) {
            case StoredImage image -> decoded(dicom, image);
            case org.espalier.film.internal.dicom.Decoded.Refused(Refusal refusal, String detail) ->
                undecodable(refusal, detail);
        };
    }

    private static Decoding decoded(DicomFile dicom, StoredImage image) {
        if (image.photometric().isGrey()) {
            var grey = new GreyPicture(image.columns(), image.rows(), image.isSigned(), image.samples());
            return new Decoded(grey, Look.of(dicom));
        }
        return ColourImage.of(dicom.dataSet(), image)
                .map(colour -> new ColourPicture(colour.columns(), colour.rows(), colour.rgb()))
                .<Decoding>map(colour -> new Decoded(colour, Look.IN_COLOUR))
                .orElseGet(() -> undecodable(Refusal.PIXELS_DESCRIBED_WRONGLY, "the palette is missing"));
    }

    /** How the values of a film become shades, from its tags alone. */
    static Look look(FilmKind kind, Path file) throws IOException {
        if (kind == FilmKind.PHOTO) {
            return Look.IN_COLOUR;
        }
        return switch (DicomReader.read(file, Limits.STANDARD)) {
            case ReadResult.Read(DicomFile dicom) -> Look.of(dicom);
            case ReadResult.Refused(Refusal refusal, String detail) -> throw new IOException(refusal + ": " + detail);
        };
    }

    private static Undecodable undecodable(Refusal refusal, String detail) {
        return new Undecodable(new Aside(Refusals.reason(refusal), FilmInspector.cleaned(detail)));
    }
}
