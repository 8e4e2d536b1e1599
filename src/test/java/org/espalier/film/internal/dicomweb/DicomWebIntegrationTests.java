package org.espalier.film.internal.dicomweb;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.TestFilm;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

@IntegrationTest
class DicomWebIntegrationTests {

    private static final int INSTANCE = 0x00080018;
    private static final int STUDY = 0x0020000D;
    private static final int SERIES = 0x0020000E;

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    UUID site;
    TestArchive archive;

    @BeforeEach
    void connect() {
        site = network.site();
        archive = new TestArchive(port, network.token(site));
    }

    private static String path(TestFilm film) {
        return "/studies/" + film.uid(STUDY) + "/series/" + film.uid(SERIES) + "/instances/" + film.uid(INSTANCE);
    }

    private static String value(JsonNode attributes, String tag) {
        return attributes.path(tag).path("Value").path(0).asString();
    }

    @Test
    void storesEachInstanceAndSaysWhereItIs() {
        var one = TestFilm.of(30, 40);
        var other = TestFilm.of(50, 20);
        var answer = archive.store(one.bytes(), other.bytes());
        assertThat(answer.statusCode()).isEqualTo(200);
        var stored = TestArchive.json(answer).path("00081199").path("Value");
        assertThat(stored).hasSize(2);
        assertThat(value(stored.get(0), "00081155")).isEqualTo(one.uid(INSTANCE));
        assertThat(value(stored.get(1), "00081190")).endsWith("/dicom-web" + path(other));
    }

    @Test
    void givesBackTheBytesAsTheyCame() {
        var film = TestFilm.of(30, 40);
        var bytes = film.bytes();
        archive.store(bytes);
        var single = archive.get(path(film), "application/dicom");
        assertThat(single.headers().firstValue("Content-Type")).hasValueSatisfying(type -> assertThat(type)
                .startsWith("application/dicom;transfer-syntax=1.2.840.10008.1.2.1"));
        assertThat(single.body()).isEqualTo(bytes);
        var many = archive.get("/studies/" + film.uid(STUDY), "multipart/related; type=\"application/dicom\"");
        assertThat(many.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type ->
                        assertThat(type).startsWith("multipart/related").contains("type=\"application/dicom\""));
        var text = new String(many.body(), StandardCharsets.ISO_8859_1);
        assertThat(text).contains(new String(bytes, StandardCharsets.ISO_8859_1));
    }

    @Test
    void saysThatItDoesNotEncodeAnew() {
        var film = TestFilm.of(30, 40);
        archive.store(film.bytes());
        var answer = archive.get(path(film), "application/dicom; transfer-syntax=1.2.840.10008.1.2.4.90");
        assertThat(answer.statusCode()).isEqualTo(406);
    }

    @Test
    void storesTheSameInstanceAgainWithoutHarm() {
        var film = TestFilm.of(30, 40).bytes();
        archive.store(film);
        assertThat(archive.store(film).statusCode()).isEqualTo(200);
        assertThat(archive.find("/instances")).hasSize(1);
    }

    @Test
    void saysWhichOfTheInstancesCannotBeShownAndWhy() {
        var good = TestFilm.of(30, 40);
        var cut = Arrays.copyOf(TestFilm.of(30, 40).bytes(), 700);
        var answer = archive.store(good.bytes(), cut, "no film".getBytes(StandardCharsets.US_ASCII));
        assertThat(answer.statusCode()).isEqualTo(202);
        var failed = TestArchive.json(answer).path("00081198").path("Value");
        assertThat(failed).hasSize(2);
        assertThat(value(failed.get(0), "00081197")).isEqualTo(String.valueOf(0xC000));
        assertThat(archive.find("/instances")).hasSize(1);
    }

    @Test
    void saysThatAnotherPictureHasTheNumberAlready() {
        var film = TestFilm.of(30, 40);
        archive.store(film.bytes());
        var answer = archive.store(film.pixels(new short[1200]).bytes());
        assertThat(answer.statusCode()).isEqualTo(409);
        var failed = TestArchive.json(answer).path("00081198").path("Value").get(0);
        assertThat(value(failed, "00081197")).isEqualTo(String.valueOf(0x0111));
        assertThat(value(failed, "00081155")).isEqualTo(film.uid(INSTANCE));
    }

    @Test
    void refusesWhatIsNoWholeMultipart() {
        assertThat(archive.store("application/dicom", TestFilm.of(3, 4).bytes()).statusCode())
                .isEqualTo(415);
        var cut = Arrays.copyOf(TestArchive.body(TestFilm.of(30, 40).bytes()), 1500);
        assertThat(archive.store("multipart/related; boundary=film-by-film", cut)
                        .statusCode())
                .isNotEqualTo(200);
        assertThat(archive.store("multipart/related; boundary=another", cut).statusCode())
                .isEqualTo(400);
    }

    @Test
    void findsStudiesSeriesAndInstancesByTheirKeys() {
        var first = TestFilm.of(30, 40).of("H-1001", "20150501").text(0x00080050, "SH", "ACC1");
        var second = TestFilm.of(30, 40)
                .of("H-1002", "20160601")
                .text(0x00080020, "DA", "20240520")
                .text(STUDY, "UI", first.uid(STUDY));
        var third = TestFilm.of(30, 40).of("H-2003", "20170701").text(0x00080020, "DA", "20250101");
        archive.store(first.bytes(), second.bytes(), third.bytes());
        assertThat(archive.find("/studies")).hasSize(2);
        assertThat(archive.find("/studies?PatientID=H-1001")).hasSize(1);
        assertThat(archive.find("/studies?PatientID=H-*")).hasSize(2);
        assertThat(archive.find("/studies?00100020=H-2003")).hasSize(1);
        assertThat(archive.find("/studies?StudyDate=20240501-20240601")).hasSize(1);
        assertThat(archive.find("/studies?StudyDate=20250101-")).hasSize(1);
        assertThat(archive.find("/studies?AccessionNumber=ACC1")).hasSize(1);
        assertThat(archive.find("/studies?PatientName=invented*")).hasSize(2);
        assertThat(archive.find("/studies?ModalitiesInStudy=CT")).isEmpty();
        assertThat(archive.find("/studies/" + first.uid(STUDY) + "/series")).hasSize(2);
        assertThat(archive.find("/series")).hasSize(3);
        assertThat(archive.find("/instances?SOPInstanceUID=" + first.uid(INSTANCE) + "," + third.uid(INSTANCE)))
                .hasSize(2);
        var study = archive.find("/studies?PatientID=H-1001").get(0);
        assertThat(value(study, "00201208")).isEqualTo("2");
        assertThat(study.path("00100010")
                        .path("Value")
                        .path(0)
                        .path("Alphabetic")
                        .asString())
                .isEqualTo("Invented^Child");
    }

    @Test
    void showsOnePageAfterAnother() {
        archive.store(
                TestFilm.of(3, 4).bytes(),
                TestFilm.of(4, 3).bytes(),
                TestFilm.of(5, 6).bytes());
        assertThat(archive.find("/studies?limit=2")).hasSize(2);
        assertThat(archive.find("/studies?limit=2&offset=2")).hasSize(1);
        assertThat(archive.get("/studies?limit=many", "application/dicom+json").statusCode())
                .isEqualTo(400);
    }

    @Test
    void tellsTheTagsOfAFilmWithoutItsPixels() {
        var film = TestFilm.of(30, 40);
        archive.store(film.bytes());
        var tags = TestArchive.json(archive.get(path(film) + "/metadata", "application/dicom+json"))
                .get(0);
        assertThat(value(tags, "00280010")).isEqualTo("40");
        assertThat(value(tags, "00080018")).isEqualTo(film.uid(INSTANCE));
        assertThat(tags.has("7FE00010")).isFalse();
    }

    @Test
    void showsThePicture() throws IOException {
        var film = TestFilm.of(300, 200);
        archive.store(film.bytes());
        var answer = archive.get(path(film) + "/rendered?viewport=150,150&window=2048,4096,linear", "image/jpeg");
        assertThat(answer.statusCode()).isEqualTo(200);
        var picture = ImageIO.read(new ByteArrayInputStream(answer.body()));
        assertThat(picture.getWidth()).isEqualTo(150);
        assertThat(picture.getHeight()).isEqualTo(100);
        assertThat(picture.getRaster().getSample(75, 50, 0)).isBetween(124, 132);
    }

    @Test
    void showsNothingOfAnotherSite() {
        var film = TestFilm.of(30, 40);
        archive.store(film.bytes());
        var stranger = new TestArchive(port, network.token(network.site()));
        assertThat(stranger.find("/studies")).isEmpty();
        assertThat(stranger.find("/instances?SOPInstanceUID=" + film.uid(INSTANCE)))
                .isEmpty();
        for (var asked : new String[] {"", "/metadata", "/rendered"}) {
            assertThat(stranger.get(path(film) + asked, "*/*").statusCode()).isEqualTo(404);
        }
    }

    @Test
    void answersNobodyWithoutAToken() {
        var nobody = new TestArchive(port, "espalier_guessed");
        assertThat(nobody.get("/studies", "*/*").statusCode()).isEqualTo(401);
        assertThat(nobody.store(TestFilm.of(3, 4).bytes()).statusCode()).isEqualTo(401);
    }
}
