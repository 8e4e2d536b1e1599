package org.espalier.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestSession;
import org.espalier.platform.Blobs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The prepared picture is a derivative: when it is lost, it is built again from the film that was kept. */
@IntegrationTest
class PyramidsIntegrationTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestDoor door;

    @Autowired
    Pyramids pyramids;

    @Autowired
    Blobs blobs;

    @Value("${espalier.data}")
    Path data;

    TestDoor.Sender radiographer;
    TestSession session;

    @BeforeEach
    void signIn() {
        radiographer = door.at("RADIOGRAPHER");
        session = new TestSession(port)
                .signIn(network.login(radiographer.staff()), network.password(radiographer.staff()));
    }

    @Test
    void buildsAMissingPictureAgain() throws IOException {
        var film = shown();
        var before = session.get(address(film, "rendered?viewport=150,350")).body();
        Files.delete(tiles(film));
        assertThat(session.get(address(film, "rendered?viewport=150,350")).body())
                .isEqualTo(before);
        assertThat(tiles(film)).exists();
    }

    @Test
    void buildsABrokenPictureAgain() throws IOException {
        var film = shown();
        var whole = Files.readAllBytes(tiles(film));
        Files.writeString(tiles(film), "no tiles");
        assertThat(new Pyramids(blobs, data).of(film)).isInstanceOf(Pyramids.Prepared.class);
        assertThat(Files.readAllBytes(tiles(film))).isEqualTo(whole);
    }

    @Test
    void saysThatAFilmHasNoPictureWhenOneLooksBeforeItWasFoundOut() {
        var film = withoutPicture();
        var early = new OpenFilm(film, pyramids);
        assertThatThrownBy(early::info).isInstanceOf(NoPictureException.class).hasMessageContaining("TOO_MANY_PIXELS");
        network.owner()
                .sql("update film set state = 'RECEIVED', aside_reason = null where id = ?")
                .param(film.id().value())
                .update();
        assertThat(session.get(address(film, "info")).statusCode()).isEqualTo(404);
        assertThat(session.get(address(film, "thumbnail")).statusCode()).isEqualTo(404);
    }

    private Film shown() {
        var sent = door.send(radiographer, TestFilm.of(300, 700).bytes(), "legs.dcm");
        return door.settled(radiographer, TestDoor.taken(sent));
    }

    private Film withoutPicture() {
        var huge = TestFilm.of(20, 30).number(0x00280010, 65_535).number(0x00280011, 65_535);
        return door.settled(radiographer, TestDoor.taken(door.send(radiographer, huge.bytes(), "huge.dcm")));
    }

    private static String address(Film film, String what) {
        return "api/films/" + film.id().value() + "/" + what;
    }

    private Path tiles(Film film) {
        var hash = film.bytes().sha256();
        return data.toAbsolutePath()
                .resolve("pyramids")
                .resolve(hash.substring(0, 2))
                .resolve(hash + ".tiles");
    }
}
