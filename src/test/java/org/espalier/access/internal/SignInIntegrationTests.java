package org.espalier.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Set;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestSession;
import org.espalier.access.TokenScope;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

@IntegrationTest
class SignInIntegrationTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    JdbcClient jdbc;

    UUID site;
    UUID nurse;

    @BeforeEach
    void person() {
        site = network.site();
        nurse = network.staff(site, "NURSE");
        network.owner().sql("delete from sign_in_throttle").update();
    }

    private TestSession session() {
        return new TestSession(port);
    }

    private static String whereTo(HttpResponse<?> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    @Test
    void signsInByNameAndPassword() {
        var session = session().signIn(network.login(nurse), network.password(nurse));
        assertThat(session.get("account").statusCode()).isEqualTo(200);
        assertThat(session().get("account").statusCode()).isEqualTo(302);
    }

    @Test
    void givesANewSessionIdAtTheDoorAndKeepsTheCookieFromScripts() {
        var session = session();
        var before = session.get("login").headers().firstValue("Set-Cookie").orElseThrow();
        var answer = session.trySignIn(network.login(nurse), network.password(nurse));
        var after = answer.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(after).isNotEqualTo(before).contains("HttpOnly").contains("SameSite=Lax");
    }

    @Test
    void answersAWrongPasswordAndAnUnknownNameAlike() {
        var wrong = session().trySignIn(network.login(nurse), "wrong");
        network.password(nurse);
        var wrongAgain = session().trySignIn(network.login(nurse), "wrong");
        var unknown = session().trySignIn("nobody-" + nurse, "wrong");
        assertThat(whereTo(wrong)).endsWith("/login?error");
        assertThat(whereTo(wrongAgain)).isEqualTo(whereTo(wrong));
        assertThat(whereTo(unknown)).isEqualTo(whereTo(wrong));
    }

    @Test
    void slowsDownGuessingOfKnownAndUnknownNamesAlike() {
        network.password(nurse);
        for (var name : new String[] {network.login(nurse), "nobody-" + nurse}) {
            for (int attempt = 0; attempt < 6; attempt++) {
                assertThat(whereTo(session().trySignIn(name, "wrong"))).endsWith("?error");
            }
            assertThat(whereTo(session().trySignIn(name, "wrong"))).contains("?wait=");
        }
    }

    @Test
    void refusesEvenTheRightPasswordWhileItMustWait() {
        var password = network.password(nurse);
        for (int attempt = 0; attempt < 8; attempt++) {
            session().trySignIn(network.login(nurse), "wrong");
        }
        network.owner()
                .sql("update sign_in_throttle set blocked_until = current_timestamp + interval '90 seconds'")
                .update();
        assertThat(whereTo(session().trySignIn(network.login(nurse), password))).contains("?wait=");
    }

    @Test
    void writesSignInsAndFailuresToTheAccessLog() {
        session().signIn(network.login(nurse), network.password(nurse));
        session().trySignIn(network.login(nurse), "wrong");
        var officer = network.staff(site, "PRIVACY_OFFICER");
        var deeds = network.as(officer, () -> jdbc.sql("select deed from access_entry where staff_id = ? order by at")
                .param(nurse)
                .query(String.class)
                .list());
        assertThat(deeds).containsExactly("SIGNED_IN", "SIGN_IN_FAILED");
    }

    @Test
    void refusesAFormWithoutTheTokenOfThePage() {
        var session = session();
        session.get("login");
        session.withoutToken();
        var answer = session.form("login", java.util.Map.of("username", "x", "password", "y"));
        assertThat(whereTo(answer)).endsWith("/login?again");
    }

    @Test
    void endsTheSessionAtSignOut() {
        var session = session().signIn(network.login(nurse), network.password(nurse));
        session.form("logout", java.util.Map.of());
        assertThat(whereTo(session.get("account"))).contains("login");
    }

    @Test
    void letsAnArchiveInByItsTokenAloneAndNowhereElse() {
        var token = network.token(site);
        var session = session();
        assertThat(session.get("dicom-web/studies").statusCode()).isEqualTo(401);
        assertThat(session.get("dicom-web/studies").headers().firstValue("WWW-Authenticate"))
                .hasValue("Bearer");
        var elsewhere = session.send(HttpRequest.newBuilder(session.address("account"))
                .header("Authorization", "Bearer " + token)
                .GET());
        assertThat(whereTo(elsewhere)).contains("login");
        session.cookies().getCookieStore().removeAll();
        var wrong = session.send(HttpRequest.newBuilder(session.address("dicom-web/studies"))
                .header("Authorization", "Bearer " + token + "x")
                .GET());
        assertThat(wrong.statusCode()).isEqualTo(401);
        var unlisted = session.send(HttpRequest.newBuilder(session.address("dicom-web/nothing-here"))
                .header("Authorization", "Bearer " + token)
                .GET());
        assertThat(unlisted.statusCode()).isEqualTo(403);
        assertThat(unlisted.headers().map()).doesNotContainKey("set-cookie");
    }

    @Test
    void opensToAKeyWhatItWasIssuedForAlone() {
        var sends = network.token(site, Set.of(TokenScope.SEND));
        var fetches = network.token(site, Set.of(TokenScope.FETCH));
        assertThat(archiveAsks("GET", sends)).isEqualTo(403);
        assertThat(archiveAsks("GET", fetches)).isNotIn(401, 403);
        assertThat(archiveAsks("POST", fetches)).isEqualTo(403);
        assertThat(archiveAsks("POST", sends)).isNotIn(401, 403);
    }

    private int archiveAsks(String method, String token) {
        var session = session();
        return session.send(HttpRequest.newBuilder(session.address("dicom-web/studies"))
                        .header("Authorization", "Bearer " + token)
                        .header("Content-Type", "multipart/related; type=\"application/dicom\"; boundary=x")
                        .method(method, HttpRequest.BodyPublishers.ofString("")))
                .statusCode();
    }

    @Test
    void showsAKeyOnceAndKeepsItsHashAlone() {
        var token = network.token(site);
        var kept = network.owner()
                .sql("select string_agg(t::text, ' ') from site_token t where site_id = ?")
                .param(site)
                .query(String.class)
                .single();
        assertThat(kept).doesNotContain(token);
        assertThatThrownBy(() -> network.as(network.operator(), () -> jdbc.sql("select secret_sha256 from site_token")
                        .query()
                        .listOfRows()))
                .rootCause()
                .hasMessageContaining("permission denied");
    }

    @Test
    void answersAnApiRequestOfNobodyWith401() {
        assertThat(session().get("api/films/none").statusCode()).isEqualTo(401);
    }

    @Test
    void deniesWhatIsNotInTheTable() {
        var session = session().signIn(network.login(nurse), network.password(nurse));
        assertThat(session.get("api/nothing-here").statusCode()).isEqualTo(403);
        assertThat(session.get("actuator/health").statusCode()).isEqualTo(403);
    }

    @Test
    void sendsThePolicyOfThePageWithANonceOfItsOwn() {
        var page = session().get("login");
        var policy = page.headers().firstValue("Content-Security-Policy").orElseThrow();
        assertThat(policy).contains("frame-ancestors 'none'").doesNotContain("script-src 'self' 'unsafe-inline'");
        var nonce = policy.replaceFirst(".*'nonce-([^']+)'.*", "$1");
        assertThat(page.body()).contains("nonce=\"" + nonce + "\"");
        assertThat(session().get("login").headers().firstValue("Content-Security-Policy"))
                .isNotEqualTo(java.util.Optional.of(policy));
        assertThat(page.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(page.headers().firstValue("Referrer-Policy")).hasValue("same-origin");
        assertThat(page.headers().firstValue("X-Frame-Options")).hasValue("DENY");
        assertThat(page.headers().firstValue("Permissions-Policy")).isPresent();
    }

    @Test
    void refusesEveryChangeWithoutTheTokenOfThePage() {
        var session = session().signIn(network.login(nurse), network.password(nurse));
        session.withoutToken();
        assertThat(session.json("api/readings/" + nurse + "/measure", "{}").statusCode())
                .isEqualTo(403);
        assertThat(session.json("webauthn/register/options", "").statusCode()).isEqualTo(403);
        assertThat(session.form("logout", java.util.Map.of()).statusCode()).isEqualTo(403);
        assertThat(session.get("account").statusCode()).isEqualTo(200);
    }

    @Test
    void takesNoSessionIdFromAnybody() {
        var chosen = "0123456789ABCDEF0123456789ABCDEF";
        var session = session();
        var answer =
                session.send(HttpRequest.newBuilder(session.address("login")).header("Cookie", "JSESSIONID=" + chosen));
        assertThat(answer.headers().firstValue("Set-Cookie").orElseThrow()).doesNotContain(chosen);
        assertThat(session.get("login;jsessionid=" + chosen).statusCode()).isNotEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"login", "account", "api/films/none", "assets/passkey.js", "dicom-web/studies", "webauthn/x"})
    void protectsAnswersOfEveryKind(String path) {
        var headers = session().get(path).headers();
        assertThat(headers.firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(headers.firstValue("X-Frame-Options")).hasValue("DENY");
        assertThat(headers.firstValue("Referrer-Policy")).hasValue("same-origin");
        assertThat(headers.firstValue("Content-Security-Policy").orElse("")).contains("frame-ancestors 'none'");
        assertThat(headers.firstValue("Cross-Origin-Opener-Policy")).hasValue("same-origin");
        assertThat(headers.map()).doesNotContainKeys("server", "x-powered-by");
    }
}
