package org.espalier.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestSession;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class PictureServiceIntegrationTests {

    private static final LocalDate DAY = LocalDate.of(2025, 5, 6);
    private static final Consent CONSENT = new Consent(Consent.By.PARENT, DAY);

    @LocalServerPort
    int port;

    @Autowired
    PictureService pictures;

    @Autowired
    PatientService patients;

    @Autowired
    TestNetwork network;

    @Autowired
    TestDoor door;

    @Autowired
    Ids ids;

    Sender surgeon;
    ChildId child;

    @BeforeEach
    void aChild() {
        surgeon = door.at("SURGEON");
        child = register();
    }

    @Test
    void keepsAClipOnceWithItsLengthAndConsent() {
        var clip = TestPictures.mp4(1000, 12_000);
        var first = kept(clip);
        assertThat(kept(clip)).isEqualTo(first);
        assertThat(surgeon.does(() -> pictures.of(child))).singleElement().satisfies(picture -> {
            assertThat(picture.kind()).isEqualTo(PictureKind.MP4);
            assertThat(picture.length()).contains(Duration.ofSeconds(12));
            assertThat(picture.takenOn()).isEqualTo(DAY);
            assertThat(picture.consent()).isEqualTo(CONSENT);
            assertThat(picture.by()).startsWith("Test person");
        });
    }

    @Test
    void keepsTheSameBytesForAnotherChildApart() {
        var clip = TestPictures.mp4(1000, 12_000);
        var first = kept(clip);
        child = register();
        assertThat(kept(clip)).isNotEqualTo(first);
    }

    @Test
    void refusesWhatIsTooLongOrUnreadableOrNoPicture() {
        assertThat(refused(TestPictures.mp4(1000, 30_001))).isEqualTo(PictureProblem.TOO_LONG);
        assertThat(refused(TestPictures.mp4(1000, 0))).isEqualTo(PictureProblem.LENGTH_UNKNOWN);
        assertThat(refused(TestPictures.webmHead())).isEqualTo(PictureProblem.LENGTH_UNKNOWN);
        assertThat(refused(TestPictures.text("<script>alert(1)</script>"))).isEqualTo(PictureProblem.NOT_A_PICTURE);
        assertThat(refused(new byte[0])).isEqualTo(PictureProblem.EMPTY);
        assertThat(refused(Arrays.copyOf(TestPictures.photo(40, 30, "jpeg"), 30)))
                .isEqualTo(PictureProblem.BROKEN);
        assertThat(refused(new byte[0])).isEqualTo(PictureProblem.EMPTY);
        assertThat(surgeon.does(() -> pictures.of(child))).isEmpty();
    }

    @Test
    void refusesMoreBytesThanTheLimit() {
        var large = Arrays.copyOf(TestPictures.mp4(1000, 9_000), 64 * 1024 * 1024 + 1);
        assertThat(refused(large)).isEqualTo(PictureProblem.TOO_LARGE);
    }

    @Test
    void sendsAnyRangeOfAClipToWhoTreatsTheChildAndNothingToAnybodyElse() {
        var clip = TestPictures.mp4(1000, 12_000);
        var path = path(kept(clip));
        var mine = signIn(surgeon);
        var whole = mine.get(path);
        assertThat(whole.statusCode()).isEqualTo(200);
        assertThat(whole.headers().firstValue("Content-Type")).contains("video/mp4");
        assertThat(whole.headers().firstValue("Accept-Ranges")).contains("bytes");
        assertThat(whole.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(whole.headers().firstValue("Cache-Control").orElse("")).contains("private");
        var part = mine.send(mine.request(path).header("Range", "bytes=4-11"));
        assertThat(part.statusCode()).isEqualTo(206);
        assertThat(part.headers().firstValue("Content-Range")).contains("bytes 4-11/" + clip.length);
        assertThat(part.body()).isEqualTo("ftypisom");
        assertThat(signIn(door.at("SURGEON")).get(path).statusCode()).isEqualTo(404);
        assertThat(signIn(new Sender(network.staff(surgeon.site().value(), "AUDITOR"), surgeon.site()))
                        .get(path)
                        .statusCode())
                .isEqualTo(403);
        assertThat(new TestSession(port).get(path).statusCode()).isNotEqualTo(200);
    }

    /** An EXIF part with a place in it is not sent on: a JPEG part begins with FF E1 and its length. */
    @Test
    void sendsAPhotoWithoutWhatTheCameraWroteBesideIt() throws IOException {
        var plain = TestPictures.photo(40, 30, "jpeg");
        var exif = TestPictures.joined(
                Arrays.copyOf(plain, 2),
                TestPictures.bytes(0xFF, 0xE1, 0x00, 0x1B),
                TestPictures.text("Exif\0\0PLACE-CANARY-9931-"),
                TestPictures.bytes(0, 0, 0, 0),
                Arrays.copyOfRange(plain, 2, plain.length));
        var id = kept(exif);
        var sent = surgeon.does(() -> pictures.open(id)).orElseThrow().photo();
        assertThat(new String(sent, StandardCharsets.ISO_8859_1)).doesNotContain("CANARY");
        assertThat(ImageIO.read(new ByteArrayInputStream(sent)).getWidth()).isEqualTo(40);
    }

    @Test
    void writesDownEveryLook() {
        var id = kept(TestPictures.mp4(1000, 12_000));
        surgeon.does(() -> pictures.open(id));
        assertThat(network.owner()
                        .sql("select count(*) from access_entry where deed = 'FILM' and film_id = ? and staff_id = ?")
                        .params(id.value(), surgeon.staff())
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void showsNothingAnyMoreOnceConsentIsTakenBack() {
        var clip = TestPictures.mp4(1000, 12_000);
        var id = kept(clip);
        assertThat(surgeon.does(() -> pictures.withdraw(id, "consent taken back")))
                .isTrue();
        assertThat(surgeon.does(() -> pictures.withdraw(id, "again"))).isFalse();
        assertThat(surgeon.does(() -> pictures.open(id))).isEmpty();
        assertThat(signIn(surgeon).get(path(id)).statusCode()).isEqualTo(404);
        assertThat(surgeon.does(() -> pictures.of(child)).getFirst().withdrawn())
                .contains("consent taken back");
        assertThat(kept(clip)).isNotEqualTo(id);
    }

    @Test
    void hidesPicturesFromAnotherHospitalAndKeepsItFromAddingAny() {
        var id = kept(TestPictures.mp4(1000, 12_000));
        var stranger = door.at("SURGEON");
        assertThat(stranger.does(() -> pictures.of(child))).isEmpty();
        assertThat(stranger.does(() -> pictures.open(id))).isEmpty();
        assertThat(stranger.does(() -> pictures.withdraw(id, "not mine"))).isFalse();
        var clip = new ByteArrayInputStream(TestPictures.mp4(1000, 5_000));
        assertThatThrownBy(() -> stranger.does(() -> pictures.receive(child, clip, DAY, CONSENT)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update clinical_picture set taken_on = '2000-01-01'",
                "delete from clinical_picture",
                "update clinical_picture_withdrawal set reason = 'x'",
                "delete from clinical_picture_withdrawal"
            })
    void stopsTheOwnerFromChangingAPicture(String statement) {
        var id = kept(TestPictures.mp4(1000, 12_000));
        surgeon.does(() -> pictures.withdraw(id, "consent taken back"));
        assertThatThrownBy(() -> network.owner().sql(statement).update())
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES002"));
    }

    private ChildId register() {
        var id = new ChildId(ids.next());
        var data = new ChildData("Walking", "Wim", LocalDate.of(2018, 3, 4), null, null);
        surgeon.does(() -> patients.register(surgeon.site(), id, data));
        return id;
    }

    private PictureReceived receive(byte[] bytes) {
        return surgeon.does(() -> pictures.receive(child, new ByteArrayInputStream(bytes), DAY, CONSENT));
    }

    private PictureId kept(byte[] bytes) {
        return ((PictureReceived.Kept) receive(bytes)).picture();
    }

    private PictureProblem refused(byte[] bytes) {
        return ((PictureReceived.Refused) receive(bytes)).problem();
    }

    private TestSession signIn(Sender who) {
        return new TestSession(port).signIn(network.login(who.staff()), network.password(who.staff()));
    }

    private static String path(PictureId id) {
        return "api/pictures/" + id.value();
    }
}
