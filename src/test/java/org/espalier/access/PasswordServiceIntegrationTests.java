package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestSession;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class PasswordServiceIntegrationTests {

    private static final String FRESH = "mossy gate and a rook";

    @LocalServerPort
    int port;

    @Autowired
    PasswordService passwords;

    @Autowired
    TestNetwork network;

    UUID nurse;
    String old;

    @BeforeEach
    void aNurse() {
        network.owner().sql("delete from sign_in_throttle").update();
        nurse = network.staff(network.site(), "NURSE");
        old = network.password(nurse);
    }

    private Optional<PasswordProblem> change(String current, String fresh) {
        return network.as(nurse, () -> passwords.change(current, fresh));
    }

    private String whereTo(String password) {
        return new TestSession(port)
                .trySignIn(network.login(nurse), password)
                .headers()
                .firstValue("Location")
                .orElse("");
    }

    @Test
    void changesWithTheCurrentOneAloneAndTheOldOneOpensNothingMore() {
        assertThat(change("not it", FRESH)).hasValue(PasswordProblem.CURRENT_WRONG);
        assertThat(change(old, old)).hasValue(PasswordProblem.UNCHANGED);
        assertThat(change(old, "short")).hasValue(PasswordProblem.TOO_SHORT);
        assertThat(whereTo(old)).doesNotContain("login");
        assertThat(change(old, FRESH)).isEmpty();
        assertThat(whereTo(old)).endsWith("/login?error");
        assertThat(whereTo(FRESH)).doesNotContain("login");
    }

    @Test
    void isTakenExactlyAsTyped() {
        change(old, FRESH);
        assertThat(whereTo(FRESH.toUpperCase(java.util.Locale.ROOT))).endsWith("/login?error");
        assertThat(whereTo(FRESH + " ")).endsWith("/login?error");
        assertThat(whereTo(FRESH.substring(0, 12))).endsWith("/login?error");
    }
}
