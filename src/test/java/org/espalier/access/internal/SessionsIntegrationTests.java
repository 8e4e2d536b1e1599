package org.espalier.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestSession;
import org.espalier.access.OpenSession;
import org.espalier.access.PasskeyService;
import org.espalier.access.PasswordService;
import org.espalier.access.SecondFactorService;
import org.espalier.access.SessionService;
import org.espalier.access.StaffId;
import org.espalier.access.StaffService;
import org.espalier.access.TestCodes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Where somebody is signed in, and what ends it: a session ended elsewhere opens nothing at its next question. */
@IntegrationTest
class SessionsIntegrationTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    SessionService sessions;

    @Autowired
    PasswordService passwords;

    @Autowired
    PasskeyService passkeys;

    @Autowired
    SecondFactorService factors;

    @Autowired
    StaffService staff;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Clock clock;

    UUID nurse;
    String password;

    @BeforeEach
    void aNurse() {
        network.owner().sql("delete from sign_in_throttle").update();
        nurse = network.staff(network.site(), "NURSE");
        password = network.password(nurse);
    }

    private TestSession signedIn() {
        var session = new TestSession(port).signIn(network.login(nurse), password);
        assertThat(isIn(session)).isTrue();
        return session;
    }

    private static boolean isIn(TestSession session) {
        return session.get("account").statusCode() == 200;
    }

    private List<OpenSession> mine(UUID who) {
        return network.as(who, sessions::mine);
    }

    private void asNurse(Runnable deed) {
        as(nurse, deed);
    }

    private void as(UUID who, Runnable deed) {
        network.as(who, () -> {
            deed.run();
            return who;
        });
    }

    @Test
    void areListedToTheirOwnerAloneAndLeaveTheListAtSignOut() {
        var one = signedIn();
        var other = signedIn();
        assertThat(mine(nurse)).hasSize(2);
        assertThat(mine(network.staff(network.site(), "NURSE"))).isEmpty();
        assertThat(mine(network.operator())).isEmpty();
        other.form("logout", java.util.Map.of());
        assertThat(mine(nurse)).hasSize(1);
        assertThat(isIn(one)).isTrue();
    }

    @Test
    void oneEndedElsewhereOpensNothingAtItsNextQuestion() {
        var one = signedIn();
        var first = mine(nurse).getFirst().id();
        var other = signedIn();
        asNurse(() -> sessions.end(first));
        assertThat(isIn(one)).isFalse();
        assertThat(isIn(other)).isTrue();
    }

    @Test
    void nobodyEndsThoseOfAColleagueInTheServiceOrInSql() {
        var session = signedIn();
        var colleague = network.staff(network.site(), "SURGEON");
        var id = mine(nurse).getFirst().id();
        as(colleague, () -> sessions.end(id));
        assertThatThrownBy(() -> network.as(colleague, () -> jdbc.sql("select end_person_sessions(?, null, now())")
                        .param(nurse)
                        .query()
                        .listOfRows()))
                .rootCause()
                .hasMessageContaining("not the sessions of the caller");
        assertThat(isIn(session)).isTrue();
    }

    @Test
    void aChangedPasswordEndsTheOthers() {
        var session = signedIn();
        network.as(nurse, () -> passwords.change(password, "four unrelated words of mine"));
        assertThat(isIn(session)).isFalse();
    }

    @Test
    void codesSetUpAndCodesRemovedEndTheOthers() {
        var before = signedIn();
        var secret = network.as(nurse, () -> factors.begin()).secret();
        network.as(nurse, () -> factors.confirm(TestCodes.now(secret, clock)));
        assertThat(isIn(before)).isFalse();
        asNurse(() -> factors.remove());
        var after = signedIn();
        network.as(nurse, () -> factors.begin());
        asNurse(() -> factors.remove());
        assertThat(isIn(after)).isFalse();
    }

    @Test
    void aPasskeyRemovedIsGoneAndEndsTheOthersButNobodyRemovesThatOfAColleague() {
        var session = signedIn();
        network.owner()
                .sql("insert into passkey values (?, ?, '', 0, true, false, false, '', '', '', 'Fern, Linux', now(),"
                        + " now())")
                .params(nurse.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8), nurse)
                .update();
        var key = network.as(nurse, passkeys::mine).getFirst();
        assertThat(key.label()).isEqualTo("Fern, Linux");
        as(network.staff(network.site(), "NURSE"), () -> passkeys.remove(key.id()));
        assertThat(network.as(nurse, passkeys::mine)).hasSize(1);
        assertThat(isIn(session)).isTrue();
        asNurse(() -> passkeys.remove(key.id()));
        assertThat(network.as(nurse, passkeys::mine)).isEmpty();
        assertThat(isIn(session)).isFalse();
    }

    @Test
    void theOperatorEndsAllOfAPersonAndARenewedPasswordDoesToo() {
        var session = signedIn();
        as(network.operator(), () -> sessions.endAllOf(new StaffId(nurse)));
        assertThat(isIn(session)).isFalse();
        var again = signedIn();
        as(network.operator(), () -> staff.renewPassword(new StaffId(nurse)));
        assertThat(isIn(again)).isFalse();
    }

    @Test
    void aFirstPasswordThatWasNotUsedForThreeDaysOpensNothingAndOnlyItsHolderLearnsWhy() {
        var first = network.as(network.operator(), () -> staff.renewPassword(new StaffId(nurse)))
                .password();
        assertThat(whereTo(first)).doesNotContain("login");
        network.owner()
                .sql("update staff_password set changed_at = now() - interval '73 hours' where staff_id = ?")
                .param(nurse)
                .update();
        assertThat(whereTo(first)).endsWith("?expired");
        assertThat(whereTo("wrong")).endsWith("?error");
    }

    private String whereTo(String tried) {
        return new TestSession(port)
                .trySignIn(network.login(nurse), tried)
                .headers()
                .firstValue("Location")
                .orElse("");
    }
}
