package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpRequest;
import java.time.Duration;
import java.time.LocalDate;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestScreens;
import org.espalier.TestSession;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor.Sender;
import org.espalier.reading.DraftService;
import org.espalier.reading.MeasureRequest;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;
import tools.jackson.databind.json.JsonMapper;

/**
 * The door as an operator sets it: with an idle time, and behind a proxy. A page left open keeps beating but keeps
 * nobody signed in; what was drawn on it is there after signing in again.
 */
@IntegrationTest
@TestPropertySource(
        properties = {
            "espalier.access.session.idle=3s",
            "espalier.access.rate.per-second=20",
            "espalier.access.rate.burst=300",
            "server.forward-headers-strategy=native",
            "server.servlet.session.cookie.name=__Host-espalier"
        })
class ConfiguredDoorIntegrationTests {

    private static final Duration BEAT = Duration.ofMillis(400);
    private static final Duration WELL_PAST_IDLE = Duration.ofMillis(4_800);

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    DraftService drafts;

    @Autowired
    AccessLogService log;

    Sender surgeon;
    FilmId film;

    @BeforeEach
    void aFilmToRead() {
        surgeon = reader.surgeon();
        film = reader.film(surgeon, reader.child(surgeon, LocalDate.of(2019, 4, 2)), LocalDate.of(2026, 1, 9));
    }

    @Test
    void endsThoughThePageBeatsAndKeepsWhatWasDrawn() {
        var draft = surgeon.does(() -> drafts.begin(film));
        var drawn = reader.movingHand(draft);
        var session = signedIn();
        var screens = new TestScreens(session);
        assertThat(session.json("api/readings/" + draft.id().value() + "/measure", kept(drawn))
                        .statusCode())
                .isEqualTo(200);
        assertThat(screens.heartbeat()).isEqualTo(200);

        await().pollInterval(BEAT).atMost(WELL_PAST_IDLE).until(() -> screens.heartbeat() != 200);
        assertThat(session.get("account").statusCode()).isEqualTo(302);

        var again = new TestScreens(signedIn());
        assertThat(again.open("film/" + film.value()))
                .contains(draft.id().value().toString());
        assertThat(surgeon.does(() -> drafts.find(film)).orElseThrow().marks().points())
                .isEqualTo(drawn.points());
    }

    @Test
    void lastsWhileSomebodyIsAtWork() throws InterruptedException {
        var session = signedIn();
        for (long worked = 0; worked < WELL_PAST_IDLE.toMillis(); worked += BEAT.toMillis()) {
            assertThat(session.get("account").statusCode()).isEqualTo(200);
            Thread.sleep(BEAT);
        }
    }

    @Test
    void behindAProxyTheBrowserIsToldToStayWithHttps() {
        var session = new TestSession(port);
        var plain = session.get("login");
        assertThat(plain.headers().map()).doesNotContainKey("strict-transport-security");
        session.cookies().getCookieStore().removeAll();
        var proxied =
                session.send(HttpRequest.newBuilder(session.address("login")).header("X-Forwarded-Proto", "https"));
        assertThat(proxied.headers().firstValue("Strict-Transport-Security"))
                .hasValueSatisfying(policy -> assertThat(policy).contains("max-age=31536000"));
        assertThat(proxied.headers().firstValue("Set-Cookie").orElse(""))
                .startsWith("__Host-espalier=")
                .contains("Secure", "HttpOnly", "Path=/")
                .doesNotContain("Domain");
    }

    @Test
    void slowsWhoeverReadsFasterThanAPersonCanAndTellsThePrivacyOfficerOnce() {
        var session = signedIn();
        int asked = 0;
        while (session.get("account").statusCode() == 200) {
            asked++;
        }
        assertThat(asked).isBetween(55, 200);
        assertThat(session.get("account").headers().firstValue("Retry-After")).isPresent();
        var officer = network.staff(surgeon.site().value(), "PRIVACY_OFFICER");
        assertThat(network.as(officer, () -> log.recent()).lines())
                .filteredOn(line -> line.subject().equals("too many requests"))
                .hasSize(1);
    }

    private TestSession signedIn() {
        return new TestSession(port).signIn(network.login(surgeon.staff()), network.password(surgeon.staff()));
    }

    private static String kept(MeasureRequest drawn) {
        return new JsonMapper()
                .writeValueAsString(new MeasureRequest(1, drawn.revision(), drawn.points(), drawn.edges(), true));
    }
}
