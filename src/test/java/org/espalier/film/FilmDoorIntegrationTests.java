package org.espalier.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.espalier.IntegrationTest;
import org.espalier.access.SiteId;
import org.espalier.film.Received.AlreadyHere;
import org.espalier.film.Received.KeptAside;
import org.espalier.film.Received.Refused;
import org.espalier.film.Received.Taken;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.access.AccessDeniedException;

@IntegrationTest
class FilmDoorIntegrationTests {

    @Autowired
    FilmService films;

    @Autowired
    TestDoor door;

    @Test
    void takesAFilmAndPreparesItsPicture() {
        var sender = door.at("RADIOGRAPHER");
        var id = TestDoor.taken(door.send(sender, TestFilm.of(700, 900).bytes(), "legs.dcm"));
        var film = door.settled(sender, id);
        assertThat(film.state()).isEqualTo(FilmState.READY);
        assertThat(film.size()).contains(new Film.Size(700, 900));
        assertThat(film.takenOn()).hasToString("Optional[2024-03-14]");
    }

    @Test
    void knowsTheSameBytesAgain() {
        var sender = door.at("RADIOGRAPHER");
        var bytes = TestFilm.of(20, 30).bytes();
        var id = TestDoor.taken(door.send(sender, bytes, "legs.dcm"));
        assertThat(door.send(sender, bytes, "again.dcm")).isEqualTo(new AlreadyHere(id));
    }

    @Test
    void takesTheSameBytesOnceHoweverManySendThemAtOnce() throws InterruptedException {
        var sender = door.at("RADIOGRAPHER");
        var bytes = TestFilm.of(200, 300).bytes();
        try (var threads = Executors.newFixedThreadPool(8)) {
            var sendings = IntStream.range(0, 16)
                    .<Callable<Received>>mapToObj(i -> () -> door.send(sender, bytes, "legs.dcm"))
                    .toList();
            var outcomes = threads.invokeAll(sendings).stream()
                    .map(outcome -> outcome.resultNow())
                    .toList();
            assertThat(outcomes).filteredOn(Taken.class::isInstance).hasSize(1);
            assertThat(outcomes).filteredOn(AlreadyHere.class::isInstance).hasSize(15);
        }
        assertThat(sender.does(() -> films.tray(sender.site()))).hasSize(1);
    }

    @Test
    void keepsAsideAnotherPictureWithTheSameNumber() {
        var sender = door.at("RADIOGRAPHER");
        var film = TestFilm.of(20, 30);
        door.send(sender, film.bytes(), "legs.dcm");
        var other = film.pixels(new short[600]).bytes();
        var outcome = door.send(sender, other, "legs.dcm");
        assertThat(outcome).isInstanceOfSatisfying(KeptAside.class, aside -> assertThat(aside.reason())
                .isEqualTo(AsideReason.SAME_NUMBER_OTHER_PICTURE));
        assertThat(door.send(sender, other, "legs.dcm")).isEqualTo(outcome);
        assertThat(sender.does(() -> films.tray(sender.site()))).hasSize(2);
    }

    @Test
    void refusesWhatIsNoFilm() {
        var sender = door.at("RADIOGRAPHER");
        assertThat(door.send(sender, new byte[0], "empty")).isEqualTo(new Refused(DoorReason.EMPTY));
        assertThat(door.send(sender, "%PDF-1.7 and so on".getBytes(), "letter.dcm"))
                .isEqualTo(new Refused(DoorReason.NOT_A_FILM));
    }

    @Test
    void keepsAsideAFilmWithoutAPicture() {
        var sender = door.at("RADIOGRAPHER");
        var bytes = TestFilm.of(20, 30).bytes();
        var cut = Arrays.copyOf(bytes, bytes.length - 1000);
        assertThat(door.send(sender, cut, "cut.dcm"))
                .isInstanceOfSatisfying(
                        KeptAside.class, aside -> assertThat(aside.reason()).isEqualTo(AsideReason.CUT_SHORT));
    }

    @Test
    void keepsAsideAFilmThatDoesNotSayWhichItIs() {
        var sender = door.at("RADIOGRAPHER");
        var film = TestFilm.of(20, 30).text(0x00080018, "UI", "../../etc/passwd");
        assertThat(door.send(sender, film.bytes(), "odd.dcm"))
                .isInstanceOfSatisfying(
                        KeptAside.class, aside -> assertThat(aside.reason()).isEqualTo(AsideReason.UNIDENTIFIED));
    }

    @Test
    void keepsAsideAFilmThatInflatesTooFar() {
        var sender = door.at("RADIOGRAPHER");
        var bomb = TestFilm.of(10_000, 11_000)
                .pixels(new short[110_000_000])
                .deflated()
                .bytes();
        assertThat(bomb.length).isLessThan(3_000_000);
        assertThat(door.send(sender, bomb, "bomb.dcm"))
                .isInstanceOfSatisfying(
                        KeptAside.class, aside -> assertThat(aside.reason()).isEqualTo(AsideReason.UNSAFE));
    }

    @Test
    void saysThatAFilmWithTooManyPixelsCannotBeShown() {
        var sender = door.at("RADIOGRAPHER");
        var film = TestFilm.of(20, 30).number(0x00280010, 65_535).number(0x00280011, 65_535);
        var id = TestDoor.taken(door.send(sender, film.bytes(), "huge.dcm"));
        assertThat(door.settled(sender, id).aside()).contains(AsideReason.TOO_MANY_PIXELS);
    }

    @Test
    void doesNotAcknowledgeAFilmWhoseSenderHangsUp() {
        var sender = door.at("RADIOGRAPHER");
        var bytes = TestFilm.of(200, 300).bytes();
        var broken = new InputStream() {
            private final InputStream some = new ByteArrayInputStream(bytes, 0, 50_000);

            @Override
            public int read() throws IOException {
                int value = some.read();
                if (value < 0) {
                    throw new IOException("the sender hung up");
                }
                return value;
            }
        };
        var outcome = sender.does(() -> films.receive(sender.site(), broken, "legs.dcm"));
        assertThat(outcome).isEqualTo(new Refused(DoorReason.NOT_STORED));
        assertThat(sender.does(() -> films.tray(sender.site()))).isEmpty();
    }

    @Test
    void takesNoFilmForASiteWhereTheSenderHasNoSuchRole() {
        var sender = door.at("RADIOGRAPHER");
        var elsewhere = door.at("RADIOGRAPHER").site();
        assertThatThrownBy(() -> sendTo(sender, elsewhere)).isInstanceOf(AccessDeniedException.class);
        var storekeeper = door.at("STOREKEEPER");
        assertThatThrownBy(() -> sendTo(storekeeper, storekeeper.site())).isInstanceOf(AccessDeniedException.class);
    }

    private void sendTo(TestDoor.Sender sender, SiteId site) {
        sender.does(() -> films.receive(site, TestFilm.of(20, 30).stream(), "legs.dcm"));
    }

    @Test
    void keepsNoControlCharactersAndNoOverlongText() {
        var sender = door.at("RADIOGRAPHER");
        var film = TestFilm.of(20, 30).text(0x00100010, "PN", "<script>\u0001\u0000" + "x".repeat(300));
        door.send(sender, film.bytes(), "a\u0000\u001bb".repeat(200));
        var item = sender.does(() -> films.tray(sender.site())).getFirst();
        assertThat(item.label().patientName()).startsWith("<script> x").hasSize(200);
        assertThat(item.originalName()).startsWith("a b").hasSizeLessThanOrEqualTo(200);
    }
}
