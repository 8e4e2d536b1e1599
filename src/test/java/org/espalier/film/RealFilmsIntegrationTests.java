package org.espalier.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.espalier.IntegrationTest;
import org.espalier.film.tiles.ColourPicture;
import org.espalier.kit.Texts;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Real films and photos, through the whole door. */
@IntegrationTest
class RealFilmsIntegrationTests {

    @Autowired
    FilmImages images;

    @Autowired
    TestDoor door;

    /** Each at a site of its own: some are one instance in several encodings. */
    @Test
    void showsEveryRealFilm() {
        var files = FilmFixtures.files("dicom/films");
        assertThat(files).hasSize(17);
        for (var file : files) {
            var sender = door.at("RADIOGRAPHER");
            var film = door.settled(sender, TestDoor.taken(door.send(sender, file)));
            assertThat(film.state()).as("%s", film).isEqualTo(FilmState.READY);
            var shown = image(sender, film, FilmView.of(null, null, null));
            assertThat(shown.getWidth()).isEqualTo(film.size().orElseThrow().width());
            assertThat(shown.getHeight()).isEqualTo(film.size().orElseThrow().height());
        }
    }

    @Test
    void readsTheScaleOfEachFilmAsItsTagsMeanIt() {
        var sender = door.at("RADIOGRAPHER");
        assertThat(scale(sender, "dx-ps-geometry")).isEqualTo("GEOMETRY 0.13 x 0.13");
        assertThat(scale(sender, "dx-ps-fiducial")).isEqualTo("FIDUCIAL 0.1244 x 0.1244");
        assertThat(scale(sender, "dx-ps-equals-ips-no-caltype")).startsWith("DETECTOR_PLANE 0.143");
        assertThat(scale(sender, "dx-ips-mag-no-ps")).isEqualTo("DETECTOR_PLANE 0.143 x 0.143 / 1.15");
        assertThat(scale(sender, "dx-nonsquare-ps")).endsWith("0.1 x 0.2");
    }

    private String scale(TestDoor.Sender sender, String name) {
        var sent = door.send(sender, FilmFixtures.file("dicom/calibration/" + name + ".dcm"));
        var scale = door.settled(sender, TestDoor.taken(sent)).scale();
        var size = scale.size().orElseThrow();
        return scale.source() + " " + size.millimetresPerPixelX() + " x " + size.millimetresPerPixelY()
                + scale.magnification().map(factor -> " / " + factor).orElse("");
    }

    @Test
    void offersTheSendersWindowsByName() {
        var sender = door.at("RADIOGRAPHER");
        var sent = door.send(sender, FilmFixtures.file("dicom/calibration/dx-14bit-sigmoid-inverse.dcm"));
        var film = door.settled(sender, TestDoor.taken(sent));
        var info = sender.does(() -> images.open(film.id())).orElseThrow().info();
        assertThat(info.windows()).hasSize(3).allSatisfy(window -> assertThat(window.name())
                .isNotBlank());
        assertThat(info.windows().getFirst().fn()).isEqualTo("sigmoid");
        assertThat(info.minValue()).isEqualTo(3431);
        assertThat(info.maxValue()).isEqualTo(16359);
    }

    @Test
    void survivesEveryMalformedFileAndSaysWhatIsWrong() {
        var sender = door.at("RADIOGRAPHER");
        var files = FilmFixtures.files("dicom/malformed");
        assertThat(files).hasSize(19);
        for (var file : files) {
            assertThat(verdict(sender, file)).as(file.getFileName().toString()).isNotBlank();
        }
        assertThat(verdict(sender, malformed("2026-05-26-oob-monochrome-65535")))
                .isEqualTo("TOO_MANY_PIXELS");
        assertThat(verdict(sender, malformed("2026-05-06-Deeply-Nested-Sequence")))
                .isEqualTo("UNSAFE");
        assertThat(verdict(sender, malformed("MR_truncated"))).isEqualTo("CUT_SHORT");
        assertThat(verdict(sender, malformed("no_meta"))).isEqualTo("NOT_A_FILM");
    }

    private static Path malformed(String name) {
        return FilmFixtures.file("dicom/malformed/" + name + ".dcm");
    }

    /** The reason, which has words; or that the file could be shown after all. */
    private String verdict(TestDoor.Sender sender, Path file) {
        return switch (door.send(sender, file)) {
            case Received.Refused refused -> named(refused.reason());
            case Received.KeptAside aside -> named(aside.reason());
            case Received.Taken taken -> verdict(door.settled(sender, taken.film()));
            case Received.AlreadyHere known -> verdict(door.settled(sender, known.film()));
        };
    }

    private static String verdict(Film film) {
        return film.aside().map(RealFilmsIntegrationTests::named).orElse("shown");
    }

    private static String named(Enum<?> reason) {
        assertThat(Texts.of(reason)).isNotBlank();
        return reason.name();
    }

    /** Orientations 0, 1, 3, 6 and 8 of one scene; upright they differ by the loss of JPEG alone. */
    @Test
    void turnsPhotosUpright() throws IOException {
        var upright = Photos.read(FilmFixtures.file("photos/Landscape_1.jpg"));
        assertThat(upright.width()).isGreaterThan(upright.height());
        for (int orientation : List.of(0, 3, 6, 8)) {
            var turned = Photos.read(FilmFixtures.file("photos/Landscape_" + orientation + ".jpg"));
            assertThat(turned.width()).isEqualTo(upright.width());
            assertThat(turned.height()).isEqualTo(upright.height());
            assertThat(meanDifference(upright, turned))
                    .as("orientation %s", orientation)
                    .isLessThan(20);
        }
    }

    @Test
    void takesPhotosThroughTheSameDoor() {
        var sender = door.at("RADIOGRAPHER");
        for (var file : FilmFixtures.files("photos")) {
            var film = door.settled(sender, TestDoor.taken(door.send(sender, file)));
            assertThat(film.state()).isEqualTo(FilmState.READY);
            assertThat(film.kind()).isEqualTo(FilmKind.PHOTO);
            assertThat(film.scale()).isEqualTo(FilmScale.NONE);
            var shown = image(sender, film, FilmView.thumbnail());
            assertThat(shown.getWidth()).isEqualTo(256);
        }
    }

    private static double meanDifference(ColourPicture one, ColourPicture other) {
        long sum = 0;
        for (int i = 0; i < one.samples().length; i++) {
            sum += Math.abs((one.samples()[i] & 0xFF) - (other.samples()[i] & 0xFF));
        }
        return (double) sum / one.samples().length;
    }

    private BufferedImage image(TestDoor.Sender sender, Film film, FilmView view) {
        var jpeg = sender.does(() -> images.open(film.id())).orElseThrow().jpeg(view);
        try {
            return ImageIO.read(new ByteArrayInputStream(jpeg));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
