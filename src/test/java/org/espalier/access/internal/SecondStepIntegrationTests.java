package org.espalier.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.util.Set;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestScreens;
import org.espalier.TestSession;
import org.espalier.access.RecoveryCodes;
import org.espalier.access.Role;
import org.espalier.access.SecondFactorService;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.access.TestCodes;
import org.espalier.kit.Texts;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

@IntegrationTest
class SecondStepIntegrationTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    SecondFactorService factors;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Clock clock;

    UUID site;
    UUID nurse;
    String password;

    @BeforeEach
    void aNurse() {
        network.owner().sql("delete from sign_in_throttle").update();
        site = network.site();
        nurse = network.staff(site, "NURSE");
        password = network.password(nurse);
    }

    private RecoveryCodes setsUp() {
        var secret = network.as(nurse, () -> factors.begin()).secret();
        return network.as(nurse, () -> factors.confirm(TestCodes.now(secret, clock)))
                .orElseThrow();
    }

    private TestSession afterThePassword() {
        return new TestSession(port).signIn(network.login(nurse), password);
    }

    @Test
    void stopsAPasswordAloneAtEveryDoor() {
        setsUp();
        var session = afterThePassword();
        assertThat(session.json("webauthn/register/options", "").statusCode()).isEqualTo(403);
        var screens = new TestScreens(session);
        for (var place : Set.of("", "account", "children", "recall")) {
            assertThat(screens.open(place)).as(place).contains("\"login/code\"");
        }
    }

    @Test
    void isNotAskedOfWhoeverHasNoCodesAndWorksWhereNoneAreDemanded() {
        assertThat(new TestScreens(afterThePassword()).open("account")).doesNotContain(Texts.text("shell.step.say"));
    }

    @Test
    void isDemandedOfARoleAtAHospitalFromTheNextSignIn() {
        network.as(network.operator(), () -> {
            factors.demandAt(new SiteId(site), Set.of(Role.NURSE));
            return site;
        });
        assertThat(new TestScreens(afterThePassword()).open("")).contains(Texts.text("shell.step.set-up"));
        var surgeon = network.staff(site, "SURGEON");
        var other = new TestSession(port).signIn(network.login(surgeon), network.password(surgeon));
        assertThat(new TestScreens(other).open("")).doesNotContain(Texts.text("shell.step.set-up"));
    }

    @Test
    void sendsWhoeverHasAPasskeyToIt() {
        network.as(network.operator(), () -> {
            factors.demandAt(new SiteId(site), Set.of(Role.NURSE));
            return site;
        });
        network.owner()
                .sql("insert into passkey values (?, ?, '', 0, true, false, false, '', '', '', 'key', now(), now())")
                .params(nurse.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8), nurse)
                .update();
        assertThat(new TestScreens(afterThePassword()).open("")).contains(Texts.text("shell.step.passkey"));
    }

    @Test
    void takesACodeOnceAndEachRecoveryCodeOnce() {
        var secret = network.as(nurse, () -> factors.begin()).secret();
        var first = TestCodes.now(secret, clock);
        var recovery = network.as(nurse, () -> factors.confirm(first)).orElseThrow();
        assertThat(network.as(nurse, () -> factors.use(first))).isFalse();
        assertThat(network.as(nurse, () -> factors.use(TestCodes.next(secret, clock))))
                .isTrue();
        assertThat(network.as(nurse, () -> factors.use(TestCodes.next(secret, clock))))
                .isFalse();
        var one = recovery.codes().getFirst();
        assertThat(network.as(nurse, () -> factors.use(one.toLowerCase(java.util.Locale.ROOT))))
                .isTrue();
        assertThat(network.as(nurse, () -> factors.use(one))).isFalse();
        assertThat(network.as(nurse, () -> factors.state()).recoveryCodes()).isEqualTo(7);
        var other = network.staff(site, "NURSE");
        assertThat(network.as(other, () -> factors.use(recovery.codes().getLast())))
                .isFalse();
    }

    @Test
    void keepsSecretsEncryptedAndCodesHashedBehindAWallWithoutADoor() {
        var secret = network.as(nurse, () -> factors.begin()).secret();
        assertThatThrownBy(() -> network.as(nurse, () -> jdbc.sql("select secret from second_factor")
                        .query()
                        .listOfRows()))
                .rootCause()
                .hasMessageContaining("permission denied");
        assertThatThrownBy(() -> network.as(
                        nurse,
                        () -> jdbc.sql("select hash from recovery_code").query().listOfRows()))
                .rootCause()
                .hasMessageContaining("permission denied");
        var kept = network.owner()
                .sql("select encode(pending, 'escape') from second_factor where staff_id = ?")
                .param(nurse)
                .query(String.class)
                .single();
        assertThat(kept).doesNotContain(secret);
    }

    @Test
    void changesNothingUntilTheFirstCodeWasGiven() {
        network.as(nurse, () -> factors.begin());
        assertThat(network.as(nurse, () -> factors.confirm("000000"))).isEmpty();
        assertThat(network.as(nurse, () -> factors.state()).on()).isFalse();
        assertThat(new TestScreens(afterThePassword()).open("account")).doesNotContain(Texts.text("shell.step.say"));
    }

    @Test
    void isTakenAwayByTheOwnerOrTheOperatorAndNobodyElse() {
        setsUp();
        var other = network.staff(site, "SURGEON");
        assertThatThrownBy(() -> network.as(other, () -> jdbc.sql("select remove_second_factor(?)")
                        .param(nurse)
                        .query()
                        .listOfRows()))
                .rootCause()
                .hasMessageContaining("not the second factor of the caller");
        network.as(network.operator(), () -> {
            factors.reset(new StaffId(nurse));
            return nurse;
        });
        assertThat(network.as(nurse, () -> factors.state()).on()).isFalse();
    }
}
