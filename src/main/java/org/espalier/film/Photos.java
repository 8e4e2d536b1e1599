package org.espalier.film;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.MetadataException;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.TimeZone;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import org.espalier.film.FilmInspector.Aside;
import org.espalier.film.tiles.ColourPicture;
import org.espalier.film.tiles.Drawing;

/** Photos of films and of legs: JPEG and PNG, turned upright as the camera says. The file itself stays as it came. */
final class Photos {

    private static final int UPRIGHT = 1;
    private static final int QUALITY = 85;

    private Photos() {}

    /** Reads a photo upright. */
    static ColourPicture read(Path file) throws IOException {
        return withReader(file, reader -> Turn.of(orientation(file)).apply(reader.read(0)));
    }

    /**
     * A photo upright as JPEG, halved until it is no wider nor higher than asked, and without what the camera wrote
     * beside the picture: where it was taken is nobody's business.
     *
     * @param most pixels across and down
     */
    static byte[] toJpeg(Path file, int most) throws IOException {
        var picture = read(file);
        while (Math.max(picture.width(), picture.height()) > most) {
            picture = picture.halved();
        }
        var image = new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_RGB);
        var samples = picture.samples();
        var pixels = new int[picture.width() * picture.height()];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = (samples[3 * i] & 0xFF) << 16 | (samples[3 * i + 1] & 0xFF) << 8 | samples[3 * i + 2] & 0xFF;
        }
        image.setRGB(0, 0, picture.width(), picture.height(), pixels, 0, picture.width());
        return Drawing.toJpeg(image, QUALITY);
    }

    /** Why a photo cannot be taken, told from its head without reading its pixels. */
    static Optional<Aside> shortcoming(Path file, int mostPixels) {
        try {
            long pixels = withReader(file, reader -> (long) reader.getWidth(0) * reader.getHeight(0));
            return pixels <= mostPixels
                    ? Optional.empty()
                    : Optional.of(new Aside(AsideReason.TOO_MANY_PIXELS, pixels + " pixels, at most " + mostPixels));
        } catch (IOException | RuntimeException e) {
            return Optional.of(new Aside(AsideReason.BROKEN, "the photo's head cannot be read"));
        }
    }

    /** The day the camera says; empty when it does not. */
    static Optional<LocalDate> takenOn(Path file) {
        return metadata(file)
                .map(metadata -> metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class))
                .map(exif -> exif.getDateOriginal(TimeZone.getTimeZone(ZoneOffset.UTC)))
                .map(date -> LocalDate.ofInstant(date.toInstant(), ZoneOffset.UTC));
    }

    /** The EXIF orientation, 1 to 8; upright when there is none. */
    private static int orientation(Path file) {
        return metadata(file)
                .map(metadata -> metadata.getFirstDirectoryOfType(ExifIFD0Directory.class))
                .map(exif -> {
                    try {
                        return exif.getInt(ExifIFD0Directory.TAG_ORIENTATION);
                    } catch (MetadataException e) {
                        return UPRIGHT;
                    }
                })
                .orElse(UPRIGHT);
    }

    private static Optional<Metadata> metadata(Path file) {
        try {
            return Optional.of(ImageMetadataReader.readMetadata(file.toFile()));
        } catch (ImageProcessingException | IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private static <T> T withReader(Path file, Reading<T> reading) throws IOException {
        try (var input = ImageIO.createImageInputStream(file.toFile())) {
            var readers = ImageIO.getImageReaders(input);
            if (!readers.hasNext()) {
                throw new IOException("no picture");
            }
            var reader = readers.next();
            try {
                reader.setInput(input, true, true);
                return reading.read(reader);
            } finally {
                reader.dispose();
            }
        }
    }

    private interface Reading<T> {
        T read(ImageReader reader) throws IOException;
    }

    /** The colour of a pixel, red, green and blue in the lower 24 bits. */
    private interface Colours {

        int at(int column, int row);

        /** A grey value is shown as it stands in the file; the general way would brighten it. */
        static Colours of(BufferedImage image) {
            var raster = image.getRaster();
            if (raster.getNumBands() > 1 || image.getColorModel() instanceof IndexColorModel) {
                return image::getRGB;
            }
            int surplus = Math.max(0, image.getColorModel().getComponentSize(0) - Byte.SIZE);
            return (column, row) -> (raster.getSample(column, row, 0) >> surplus) * 0x010101;
        }
    }

    /**
     * Where an upright pixel comes from (EXIF 2.32, tag 0112H).
     *
     * @param swapped whether the picture lies on its side
     * @param mirroredX whether columns run backwards in the file
     * @param mirroredY whether rows run backwards in the file
     */
    private record Turn(boolean swapped, boolean mirroredX, boolean mirroredY) {

        static Turn of(int orientation) {
            return switch (orientation) {
                case 2 -> new Turn(false, true, false);
                case 3 -> new Turn(false, true, true);
                case 4 -> new Turn(false, false, true);
                case 5 -> new Turn(true, false, false);
                case 6 -> new Turn(true, false, true);
                case 7 -> new Turn(true, true, true);
                case 8 -> new Turn(true, true, false);
                default -> new Turn(false, false, false);
            };
        }

        ColourPicture apply(BufferedImage image) {
            int width = swapped ? image.getHeight() : image.getWidth();
            int height = swapped ? image.getWidth() : image.getHeight();
            var samples = new byte[width * height * 3];
            var colours = Colours.of(image);
            int i = 0;
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    int column = swapped ? y : x;
                    int row = swapped ? x : y;
                    int rgb = colours.at(
                            mirroredX ? image.getWidth() - 1 - column : column,
                            mirroredY ? image.getHeight() - 1 - row : row);
                    samples[i++] = (byte) (rgb >> 16);
                    samples[i++] = (byte) (rgb >> 8);
                    samples[i++] = (byte) rgb;
                }
            }
            return new ColourPicture(width, height, samples);
        }
    }
}
