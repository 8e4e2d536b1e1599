package org.espalier.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.espalier.IntegrationTest;
import org.espalier.film.internal.dicom.ConfidentialityProfile;
import org.espalier.film.internal.dicom.DataSet;
import org.espalier.film.internal.dicom.DicomFile;
import org.espalier.film.internal.dicom.DicomReader;
import org.espalier.film.internal.dicom.Element;
import org.espalier.film.internal.dicom.Limits;
import org.espalier.film.internal.dicom.PixelDecoder;
import org.espalier.film.internal.dicom.ReadResult;
import org.espalier.film.internal.dicom.StoredImage;
import org.espalier.film.internal.dicom.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * No copy tells whose it is, byte by byte. Checked against DICOM PS3.15 annex E, table E.1-1 (the resource beside the
 * profile names its edition), and against what the films themselves say.
 */
@IntegrationTest
class FilmCopiesIntegrationTests {

    /** Words of the standard that a copy may hold although a film held them too. */
    private static final Set<String> OF_THE_STANDARD = Set.of(
            "mono",
            "monochrome1",
            "monochrome2",
            "linear",
            "fiducial",
            "geometry",
            "sigmoid",
            "identity",
            "profile",
            "basic");

    private static final Pattern NUMBERS = Pattern.compile("[-+0-9.eE\\\\ ]+");

    @Autowired
    FilmCopies copies;

    @Autowired
    TestDoor door;

    private Film film(byte[] bytes) {
        var sender = door.at("RADIOGRAPHER");
        return door.settled(sender, TestDoor.taken(door.send(sender, bytes, "Goldhahn-legs.dcm")));
    }

    private byte[] copied(Film film, Cover... covers) {
        try (var bytes = copies.file(copies.copy(film, List.of(covers)))) {
            return bytes.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static DicomFile read(byte[] bytes) {
        return ((ReadResult.Read) DicomReader.read(ByteBuffer.wrap(bytes), Limits.STANDARD)).file();
    }

    private static StoredImage pixels(byte[] bytes) {
        return (StoredImage) PixelDecoder.decode(read(bytes), Limits.STANDARD);
    }

    @Test
    void noTextOfARealFilmIsInItsCopy() throws IOException {
        var files = new ArrayList<>(FilmFixtures.files("dicom/films"));
        files.addAll(FilmFixtures.files("dicom/calibration"));
        int searched = 0;
        for (Path file : files) {
            var original = Files.readAllBytes(file);
            var copy = copied(film(original));
            var words = words(read(original).dataSet());
            searched += words.size();
            assertThat(words).as(file.getFileName().toString()).noneMatch(word -> holds(copy, word));
            assertThat(forbidden(read(copy).dataSet()))
                    .as(file.getFileName().toString())
                    .isEmpty();
        }
        assertThat(searched).as("words searched for").isGreaterThan(200);
    }

    @Test
    void pixelsAndScaleStayAsTheyWere() throws IOException {
        for (Path file : FilmFixtures.files("dicom/calibration")) {
            var original = Files.readAllBytes(file);
            var film = film(original);
            var copy = copied(film);
            assertThat(pixels(copy).samples()).isEqualTo(pixels(original).samples());
            assertThat(film(copy).scale()).as(file.getFileName().toString()).isEqualTo(film.scale());
        }
    }

    @Test
    void whatIsPlantedAnywhereIsGone() {
        var canary = "Goldhahn";
        var original = TestFilm.of(120, 90)
                .of("GOLDHAHN-5519", "20170309")
                .text(0x00080080, "LO", "Goldhahn Hospital")
                .text(0x00081030, "LO", "Legs of Goldhahn")
                .text(0x00100010, "PN", "Goldhahn^Serafine")
                .text(0x00104000, "LT", "Goldhahn came late")
                .text(0x00091001, "LO", "Goldhahn private")
                .text(0x00180015, "CS", "GOLDHAHN")
                .text(0x00181030, "LO", "Goldhahn protocol")
                .text(0x00200062, "CS", "GOLDHAHN")
                .text(0x00280A02, "CS", "GOLDHAHN")
                .text(0x00281055, "LO", "Goldhahn window")
                .text(0x00281050, "DS", "2000")
                .text(0x00281051, "DS", "4000")
                .text(0x60000022, "LO", "Goldhahn overlay")
                .text(0x60004000, "LT", "Goldhahn overlay");
        var copy = copied(film(original.bytes()));
        assertThat(List.of(canary, "Serafine", "20170309", "20240314", "5519", original.uid(0x00080018)))
                .noneMatch(word -> holds(copy, word));
        assertThat(forbidden(read(copy).dataSet())).isEmpty();
        assertThat(read(copy).dataSet().string(new Tag(0x00120062))).contains("YES");
        assertThat(read(copy).dataSet().date(Tag.STUDY_DATE)).isEmpty();
    }

    @Test
    void everyCopyHasNumbersOfItsOwn() {
        var film = film(TestFilm.of(60, 80).bytes());
        assertThat(read(copied(film)).dataSet().string(Tag.SOP_INSTANCE_UID))
                .isNotEqualTo(read(copied(film)).dataSet().string(Tag.SOP_INSTANCE_UID));
    }

    @Test
    void whatIsCoveredIsBlackInThePixelsThemselves() throws IOException {
        for (var photometric : List.of("MONOCHROME1", "MONOCHROME2")) {
            var film =
                    film(TestFilm.of(64, 48).text(0x00280004, "CS", photometric).bytes());
            var copy = copied(film, new Cover(10, 5, 20, 10), new Cover(60, 40, 400, 400));
            var shown = ImageIO.read(new java.io.ByteArrayInputStream(
                    copies.open(UUID.randomUUID(), film.site(), copies.copy(film, List.of(new Cover(10, 5, 20, 10))))
                            .jpeg(FilmView.of(null, null, null))));
            assertThat(shown.getRGB(20, 10) & 0xFF).as(photometric).isLessThan(12);
            var before = pixels(copied(film));
            var after = pixels(copy);
            int black = after.value(5 * 64 + 10);
            for (int y = 0; y < 48; y++) {
                for (int x = 0; x < 64; x++) {
                    boolean covered = x >= 10 && x < 30 && y >= 5 && y < 15 || x >= 60 && y >= 40;
                    assertThat(after.value(y * 64 + x)).isEqualTo(covered ? black : before.value(y * 64 + x));
                }
            }
        }
    }

    private static boolean holds(byte[] bytes, String word) {
        return new String(bytes, StandardCharsets.ISO_8859_1)
                .toLowerCase(Locale.ROOT)
                .contains(word.toLowerCase(Locale.ROOT));
    }

    /** Every text of five characters and more, of tags that hold text and no numbers, nested ones too. */
    private static List<String> words(DataSet set) {
        var words = new ArrayList<String>();
        for (Element element : set) {
            set.items(element.tag()).forEach(item -> words.addAll(words(item)));
            boolean registered = Set.of(Tag.SOP_CLASS_UID, Tag.PHOTOMETRIC_INTERPRETATION, Tag.MODALITY)
                    .contains(element.tag());
            if (!registered) {
                set.strings(element.tag()).stream()
                        .map(String::strip)
                        .filter(text -> text.length() >= 5 && !text.startsWith("1.2.840.10008."))
                        .filter(text ->
                                ConfidentialityProfile.action(element.tag()).isPresent()
                                        || !NUMBERS.matcher(text).matches())
                        .filter(text -> !OF_THE_STANDARD.contains(text.toLowerCase(Locale.ROOT)))
                        .forEach(words::add);
            }
        }
        return words;
    }

    /**
     * Elements that the profile takes out or empties and that still hold something; UIDs are new ones, tested apart.
     */
    private static List<Tag> forbidden(DataSet set) {
        var found = new ArrayList<Tag>();
        for (Element element : set) {
            set.items(element.tag()).forEach(item -> found.addAll(forbidden(item)));
            var action = ConfidentialityProfile.action(element.tag());
            boolean empty = set.bytes(element.tag())
                    .filter(bytes -> bytes.remaining() == 0)
                    .isPresent();
            if (action.filter(one -> !one.contains("U")).isPresent()
                    && !(action.get().contains("Z") && empty)) {
                found.add(element.tag());
            }
        }
        return found;
    }
}
