package org.espalier.opinion;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestScreens;
import org.espalier.TestSession;
import org.espalier.TestWorld;
import org.espalier.access.StaffId;
import org.espalier.film.FilmFixtures;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.TestDoor;
import org.espalier.film.TestDoor.Sender;
import org.espalier.film.TestFilm;
import org.espalier.kit.Urls;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What a colleague can fetch, byte by byte: pages, pictures, files, headers. Log lines are watched by the canaries. */
@IntegrationTest
class DeidentificationIntegrationTests {

    private static final List<String> OF_THE_CHILD =
            List.of("Zaunkoenig", "Quirina", "7731", "2016-05-20", "20160520", "20-May-2016", "20 May 2016");

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    TestDoor door;

    @Autowired
    TestOpinion world;

    @Autowired
    PatientService patients;

    @Autowired
    FilmService films;

    @Autowired
    OpinionService opinions;

    @Autowired
    Ids ids;

    private ChildId child(Sender asker) {
        var child = new ChildId(ids.next());
        asker.does(() -> patients.register(asker.site(), child, TestWorld.CHILD));
        return child;
    }

    private FilmId film(Sender asker, ChildId child, byte[] bytes) {
        var film = door.settled(asker, TestDoor.taken(door.send(asker, bytes, "Zaunkoenig.dcm")));
        if (film.child().isEmpty()) {
            asker.does(() -> films.assign(film.id(), film.version(), child, LocalDate.of(2024, 3, 14), null));
        }
        return film.id();
    }

    /** Everything a colleague is sent about a thread: each answer with its headers, and what the screen says. */
    private List<String> fetched(Sender colleague, ThreadId thread) {
        var session =
                new TestSession(port).signIn(network.login(colleague.staff()), network.password(colleague.staff()));
        var sent = new ArrayList<String>();
        for (var film :
                colleague.does(() -> opinions.open(thread)).orElseThrow().films()) {
            for (var what : List.of("info", "rendered", "thumbnail", "dicom")) {
                var answer = session.bytes("api/opinions/" + thread.value() + "/films/" + film.id() + "/" + what);
                assertThat(answer.statusCode()).as(what).isEqualTo(200);
                sent.add(answer.headers().map() + new String(answer.body(), StandardCharsets.ISO_8859_1));
            }
        }
        var screens = new TestScreens(session);
        sent.add(screens.open(Urls.opinion(thread.value())));
        sent.add(screens.open(Urls.OPINIONS));
        return sent;
    }

    private static void assertNothingOf(List<String> words, List<String> sent) {
        assertThat(sent).hasSizeGreaterThan(4).allSatisfy(answer -> {
            var small = answer.toLowerCase(Locale.ROOT);
            assertThat(words).noneMatch(word -> small.contains(word.toLowerCase(Locale.ROOT)));
        });
    }

    @Test
    void nothingOfTheChildIsInAnythingAColleagueCanFetch() {
        var asker = reader.surgeon();
        var colleague = reader.surgeon();
        var child = child(asker);
        var original = TestFilm.of(400, 300)
                .of("CANARY-7731", "20160520")
                .text(0x00080080, "LO", "Zaunkoenig ward")
                .text(0x00100010, "PN", "Zaunkoenig^Quirina")
                .text(0x60000022, "LO", "Quirina overlay");
        var film = film(asker, child, original.bytes());
        reader.signed(asker, film);
        var thread = world.asked(asker, child, List.of(film), colleague);
        asker.does(() -> opinions.say(thread, ids.next(), "It grew worse.", Optional.empty()));
        var words = new ArrayList<>(OF_THE_CHILD);
        words.addAll(List.of(
                child.value().toString(),
                film.value().toString(),
                original.uid(0x00080018),
                "2024-03-14",
                "14-Mar-2024"));
        assertNothingOf(words, fetched(colleague, thread));
    }

    @Test
    void nothingOfARealFilmIsInAnythingAColleagueCanFetch() throws Exception {
        var asker = reader.surgeon();
        var colleague = reader.surgeon();
        var child = child(asker);
        var file = FilmFixtures.file("dicom/films/cr-tiny-mono1-ips.dcm");
        var thread = world.asked(asker, child, List.of(film(asker, child, Files.readAllBytes(file))), colleague);
        var words = new ArrayList<>(OF_THE_CHILD);
        words.addAll(List.of("Archibald", "77654033", "Agfa", "dcanon", "1196527414", "C Spine"));
        assertNothingOf(words, fetched(colleague, thread));
    }

    @Test
    void anOldAddressOpensNothingOnceTheGrantEnded() {
        var asker = reader.surgeon();
        var colleague = reader.surgeon();
        var child = child(asker);
        var film = film(asker, child, TestFilm.of(60, 80).bytes());
        var thread = world.asked(asker, child, List.of(film), colleague);
        UUID shown = world.film(colleague, thread);
        asker.does(() -> opinions.withdraw(thread, new StaffId(colleague.staff())));
        var session =
                new TestSession(port).signIn(network.login(colleague.staff()), network.password(colleague.staff()));
        for (var what : List.of("info", "rendered", "thumbnail", "dicom")) {
            assertThat(session.get("api/opinions/" + thread.value() + "/films/" + shown + "/" + what)
                            .statusCode())
                    .as(what)
                    .isEqualTo(404);
        }
        assertThat(new TestScreens(session).open(Urls.opinion(thread.value()))).doesNotContain(TestOpinion.QUESTION);
    }
}
