package org.espalier.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.time.LocalDate;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestSession;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

@IntegrationTest
class FilmControllerIntegrationTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestDoor door;

    @Autowired
    PatientService patients;

    @Autowired
    JdbcClient jdbc;

    TestDoor.Sender radiographer;
    TestSession session;
    ChildId child;
    FilmId film;

    @BeforeEach
    void filmOfAChild() {
        radiographer = door.at("RADIOGRAPHER");
        session = signIn(radiographer.staff());
        child = new ChildId(UUID.randomUUID());
        var born = LocalDate.of(2015, 5, 1);
        radiographer.does(() ->
                patients.register(radiographer.site(), child, new ChildData("Invented", "Child", born, null, "H-77")));
        var bytes = TestFilm.of(1300, 700).of("H-77", "20150501").bytes();
        film = TestDoor.taken(door.send(radiographer, bytes, "legs.dcm"));
    }

    private TestSession signIn(UUID staff) {
        return new TestSession(port).signIn(network.login(staff), network.password(staff));
    }

    private String path(String what) {
        return "api/films/" + film.value() + "/" + what;
    }

    @Test
    void tellsTheFilmRoomWhatItMustKnow() {
        var answer = session.get(path("info"));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .contains("\"width\":1300", "\"height\":700", "\"tileSize\":512", "\"levels\":2")
                .contains("\"fn\":\"linear-exact\"", "\"minValue\":0.0", "No scale on the film");
    }

    @Test
    void sendsATileThatOnlyTheReadersBrowserMayKeep() {
        var answer = session.get(path("rendered?viewport=138,188,1024,512,276,188&window=2000,4000,linear"));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(answer.headers().allValues("Cache-Control")).containsExactly("max-age=300, private");
        var tag = answer.headers().firstValue("ETag").orElseThrow();
        var again = session.send(HttpRequest.newBuilder(
                        session.address(path("rendered?viewport=138,188,1024,512,276,188&window=2000,4000,linear")))
                .header("If-None-Match", tag));
        assertThat(again.statusCode()).isEqualTo(304);
        var other = session.get(path("rendered?viewport=138,188,1024,512,276,188&window=2001,4000,linear"));
        assertThat(other.headers().firstValue("ETag"))
                .isNotEqualTo(answer.headers().firstValue("ETag"));
    }

    @Test
    void saysWhatIsWrongWithAView() {
        assertThat(session.get(path("rendered?viewport=9999,1")).statusCode()).isEqualTo(400);
        assertThat(session.get(path("rendered?viewport=10,10,5000,0,10,10")).statusCode())
                .isEqualTo(400);
        assertThat(session.get(path("rendered?viewport=10,10&window=1,2")).statusCode())
                .isEqualTo(400);
        assertThat(session.get(path("rendered?viewport=10,10&window=1,0,linear"))
                        .statusCode())
                .isEqualTo(400);
        assertThat(session.get(path("rendered?viewport=10,10&quality=0")).statusCode())
                .isEqualTo(400);
        assertThat(session.get("api/films/" + UUID.randomUUID() + "/info").statusCode())
                .isEqualTo(404);
    }

    @Test
    void writesDownOneLookAPersonFilmAndHour() {
        session.get(path("info"));
        session.get(path("thumbnail"));
        session.get(path("rendered?viewport=100,100"));
        var looks = network.owner()
                .sql("select count(*) from access_entry where film_id = ? and staff_id = ? and children = array[?]")
                .params(film.value(), radiographer.staff(), child.value())
                .query(Long.class)
                .single();
        assertThat(looks).isBetween(1L, 2L);
    }

    @Test
    void showsNothingToAnotherSite() {
        var stranger = door.at("SURGEON");
        var theirs = signIn(stranger.staff());
        for (var asked : new String[] {"info", "thumbnail", "rendered?viewport=100,100"}) {
            assertThat(theirs.get(path(asked)).statusCode()).isEqualTo(404);
        }
        for (var table : new String[] {"film", "film_label", "film_assignment"}) {
            var rows = network.as(stranger.staff(), () -> jdbc.sql("select count(*) from " + table)
                    .query(Long.class)
                    .single());
            assertThat(rows).as(table).isZero();
        }
        var changed = network.as(stranger.staff(), () -> jdbc.sql("update film set child_id = null")
                .update());
        assertThat(changed).isZero();
    }

    @Test
    void showsNothingToThoseWithoutNeed() {
        var storekeeper = network.staff(radiographer.site().value(), "STOREKEEPER");
        assertThat(signIn(storekeeper).get(path("thumbnail")).statusCode()).isEqualTo(403);
        var rows = network.as(
                storekeeper,
                () -> jdbc.sql("select count(*) from film").query(Long.class).single());
        assertThat(rows).isZero();
        assertThat(new TestSession(port).get(path("thumbnail")).statusCode()).isEqualTo(401);
    }

    @Test
    void keepsTheNamesOnFilmsFromThoseWhoNeedOnlyThePictures() {
        var auditor = network.staff(radiographer.site().value(), "AUDITOR");
        var labels = network.as(auditor, () -> jdbc.sql("select count(*) from film_label")
                .query(Long.class)
                .single());
        assertThat(labels).isZero();
    }
}
