package org.espalier.access.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestSession;
import org.espalier.TestWorld;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What the door says to browsers, and what it does not do however it is asked. */
@IntegrationTest
class DoorHeadersIntegrationTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestWorld world;

    @BeforeEach
    void nobodyHasToWait() {
        network.owner().sql("delete from sign_in_throttle").update();
    }

    private TestSession signedIn(UUID who) {
        return new TestSession(port).signIn(network.login(who), network.password(who));
    }

    private TestSession nurse() {
        return signedIn(network.staff(network.site(), "NURSE"));
    }

    @Test
    void pageTakesNothingFromElsewhereAndNoPlugin() {
        var policy = new TestSession(port)
                .get("login")
                .headers()
                .firstValue("Content-Security-Policy")
                .orElseThrow();
        assertThat(policy)
                .contains("default-src 'none'", "object-src 'none'", "base-uri 'self'", "form-action 'self'")
                .doesNotContain("http:", "https:", "*");
    }

    @Test
    void whatIsOfAChildIsKeptByNoSharedStore() {
        var hospital = world.hospital();
        var session = signedIn(hospital.surgeon());
        for (var place : new String[] {
            "course/" + hospital.child().value(), "api/films/" + hospital.film().value() + "/info"
        }) {
            var kept = session.get(place).headers().firstValue("Cache-Control").orElse("");
            assertThat(kept).as(place).containsAnyOf("no-store", "private").doesNotContain("public");
        }
        assertThat(session.get("account").headers().firstValue("Cache-Control").orElse(""))
                .contains("no-store");
    }

    @ParameterizedTest
    @ValueSource(strings = {"login", "account", "api/films/none", "dicom-web/studies", "assets/passkey.js"})
    void noOtherOriginIsLetIn(String path) {
        var session = nurse();
        for (var method : new String[] {"GET", "OPTIONS"}) {
            var answer = session.send(HttpRequest.newBuilder(session.address(path))
                    .header("Origin", "https://elsewhere.invalid")
                    .header("Access-Control-Request-Method", "POST")
                    .method(method, BodyPublishers.noBody()));
            assertThat(answer.headers().map().keySet()).noneMatch(name -> name.startsWith("access-control-"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"TRACE", "CONNECTED", "PROPFIND", "PUT"})
    void otherMethodsAreRefused(String method) {
        var session = nurse();
        var answer = session.send(
                HttpRequest.newBuilder(session.address("api/films/none")).method(method, BodyPublishers.noBody()));
        assertThat(answer.statusCode()).isBetween(400, 501).isNotEqualTo(500);
        assertThat(answer.body()).doesNotContainIgnoringCase("cookie");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "assets/",
                "themes/",
                "VAADIN/",
                ".git/config",
                "META-INF/MANIFEST.MF",
                "WEB-INF/web.xml",
                "application.properties",
                "themes/..%2f..%2fapplication.properties",
                "assets/%2e%2e/%2e%2e/application.properties",
                "actuator/env",
                "h2-console",
                "v3/api-docs"
            })
    void foldersAndWhatIsNotServedStayShut(String path) {
        var answer = nurse().get(path);
        assertThat(answer.statusCode()).isIn(302, 400, 403, 404);
        assertThat(answer.body()).doesNotContain("espalier.", "spring.", "Manifest-Version", "passkey.js");
    }

    @Test
    void aChangeAskedForByGetIsRefused() {
        var session = nurse();
        for (var path : new String[] {"logout", "webauthn/register/options", "login/webauthn"}) {
            assertThat(session.get(path).statusCode()).as(path).isNotEqualTo(200);
        }
        assertThat(session.get("account").statusCode()).isEqualTo(200);
    }

    @Test
    void aMistakeTellsNothingOfTheInside() {
        var session = nurse();
        var answer = session.json("api/readings/" + UUID.randomUUID() + "/measure", "{\"seq\": [");
        assertThat(answer.statusCode()).isBetween(400, 499);
        assertThat(answer.body()).doesNotContain("Exception", "org.", "java.", "at ", "Jackson");
    }
}
