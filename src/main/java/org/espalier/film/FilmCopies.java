package org.espalier.film;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.film.internal.dicom.ColourImage;
import org.espalier.film.internal.dicom.DeidentifiedFile;
import org.espalier.film.internal.dicom.DicomFile;
import org.espalier.film.internal.dicom.DicomReader;
import org.espalier.film.internal.dicom.GreyTransform;
import org.espalier.film.internal.dicom.Limits;
import org.espalier.film.internal.dicom.PixelDecoder;
import org.espalier.film.internal.dicom.ReadResult;
import org.espalier.film.internal.dicom.StoredImage;
import org.espalier.platform.Blobs;
import org.springframework.stereotype.Component;

/**
 * Makes copies of films that do not tell whose they are, and opens them. Who may have one made, and see it, is for the
 * module that keeps it to say.
 */
@Component
public class FilmCopies {

    private static final long MOST_BYTES = 1L << 30;

    private final Blobs blobs;
    private final Pyramids pyramids;
    private final Clock clock;

    FilmCopies(Blobs blobs, Pyramids pyramids, Clock clock) {
        this.blobs = blobs;
        this.pyramids = pyramids;
        this.clock = clock;
    }

    /**
     * Copies the pixels of a film that can be shown, with the rectangles made black in them.
     *
     * @throws NoPictureException when the film has no picture
     */
    public FilmCopy copy(Film film, List<Cover> covers) {
        var size = film.size().orElseThrow(() -> new NoPictureException(AsideReason.PICTURE_DAMAGED));
        try {
            var file = blobs.path(film.bytes());
            var bytes = film.kind() == FilmKind.PHOTO ? photo(file, covers) : dicom(file, covers);
            return new FilmCopy(
                    blobs.put(new ByteArrayInputStream(bytes), MOST_BYTES), size, film.scale(), covers.size());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Copies a photo of the child upright, with the rectangles made black in it; nothing that the camera wrote beside
     * the picture is carried over.
     */
    public FilmCopy copy(ClinicalPicture photo, List<Cover> covers) {
        try {
            var picture = Photos.read(blobs.path(photo.bytes()));
            var bytes = colour(Optional.empty(), picture.width(), picture.height(), picture.samples(), covers);
            return new FilmCopy(
                    blobs.put(new ByteArrayInputStream(bytes), MOST_BYTES),
                    new Film.Size(picture.width(), picture.height()),
                    FilmScale.NONE,
                    covers.size());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens a copy to be looked at. */
    public OpenFilm open(UUID id, SiteId site, FilmCopy copy) {
        var film = new Film(
                new FilmId(id),
                site,
                Optional.empty(),
                1,
                FilmState.READY,
                FilmKind.DICOM,
                Optional.empty(),
                Optional.empty(),
                Optional.of(copy.size()),
                copy.scale(),
                Optional.empty(),
                copy.bytes(),
                clock.instant());
        return new OpenFilm(film, pyramids);
    }

    /** The file of a copy itself. */
    public InputStream file(FilmCopy copy) {
        try {
            return blobs.open(copy.bytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] photo(Path file, List<Cover> covers) throws IOException {
        var picture = Photos.read(file);
        return colour(Optional.empty(), picture.width(), picture.height(), picture.samples(), covers);
    }

    private static byte[] dicom(Path file, List<Cover> covers) {
        if (DicomReader.read(file, Limits.STANDARD) instanceof ReadResult.Read(DicomFile dicom)
                && PixelDecoder.decode(dicom, Limits.STANDARD) instanceof StoredImage image) {
            return image.photometric().isGrey()
                    ? grey(dicom, image, covers)
                    : ColourImage.of(dicom.dataSet(), image)
                            .map(picture -> colour(
                                    Optional.of(dicom), picture.columns(), picture.rows(), picture.rgb(), covers))
                            .orElseThrow(() -> new NoPictureException(AsideReason.PICTURE_DAMAGED));
        }
        throw new NoPictureException(AsideReason.PICTURE_DAMAGED);
    }

    private static byte[] colour(Optional<DicomFile> dicom, int width, int height, byte[] rgb, List<Cover> covers) {
        covers.forEach(cover -> cover.blacken(width, height, 3, (from, to) -> Arrays.fill(rgb, from, to, (byte) 0)));
        return DeidentifiedFile.ofColour(dicom.map(DicomFile::dataSet), width, height, rgb, !covers.isEmpty());
    }

    private static byte[] grey(DicomFile dicom, StoredImage image, List<Cover> covers) {
        short black = black(GreyTransform.of(dicom.dataSet(), image).orElseThrow(), image);
        covers.forEach(cover -> cover.blacken(
                image.columns(), image.rows(), 1, (from, to) -> Arrays.fill(image.samples(), from, to, black)));
        return DeidentifiedFile.ofGrey(dicom.dataSet(), image, image.samples(), !covers.isEmpty());
    }

    /** The darker of the least and the greatest value in the picture. */
    private static short black(GreyTransform transform, StoredImage image) {
        int least = image.value(0);
        int greatest = least;
        for (int i = 0; i < image.samples().length; i++) {
            least = Math.min(least, image.value(i));
            greatest = Math.max(greatest, image.value(i));
        }
        var shades = transform.table(transform.standard(image));
        return (short) ((shades[least & 0xFFFF] & 0xFF) <= (shades[greatest & 0xFFFF] & 0xFF) ? least : greatest);
    }
}
