package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

@IntegrationTest
class SignAgainIntegrationTests {

    @Autowired
    SignAgain signAgain;

    @Autowired
    SecondFactorService factors;

    @Autowired
    TestNetwork network;

    @Autowired
    Clock clock;

    UUID surgeon;
    String password;

    @BeforeEach
    void person() {
        surgeon = network.staff(network.site(), "SURGEON");
        password = network.password(surgeon);
    }

    @AfterEach
    void leave() {
        RequestContextHolder.resetRequestAttributes();
        SecurityContextHolder.clearContext();
    }

    @Test
    void asksNothingOfWorkThatComesFromNoScreen() {
        assertThat(signAgain.isNeeded()).isFalse();
        signAgain.prove();
    }

    @Test
    void takesSigningInForAProofOfTenMinutes() {
        sit(Duration.ofMinutes(9));
        assertThat(signAgain.isNeeded()).isFalse();
        sit(Duration.ofMinutes(11));
        assertThat(signAgain.isNeeded()).isTrue();
        assertThatThrownBy(signAgain::prove).isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void takesThePasswordGivenAgainAndNoOther() {
        sit(Duration.ofHours(1));
        assertThat(signAgain.confirm("not the " + password)).isEqualTo(SignAgain.Answer.WRONG);
        assertThat(signAgain.isNeeded()).isTrue();
        assertThat(signAgain.confirm(password)).isEqualTo(SignAgain.Answer.CONFIRMED);
        assertThat(signAgain.isNeeded()).isFalse();
    }

    @Test
    void slowsDownWhoeverGuesses() {
        sit(Duration.ofHours(1));
        SignAgain.Answer answer = SignAgain.Answer.WRONG;
        for (int guess = 0; guess < 50 && answer == SignAgain.Answer.WRONG; guess++) {
            answer = signAgain.confirm("guess " + guess);
        }
        assertThat(answer).isEqualTo(SignAgain.Answer.WAIT);
        assertThat(signAgain.confirm(password)).isEqualTo(SignAgain.Answer.WAIT);
    }

    @Test
    void asksOfAThreadThatWorksForAPageToo() {
        sit(Duration.ofHours(1));
        RequestContextHolder.resetRequestAttributes();
        assertThat(signAgain.isNeeded()).isTrue();
        assertThatThrownBy(signAgain::prove).isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void writesDownEveryPasswordThatWasWrong() {
        sit(Duration.ofHours(1));
        signAgain.confirm("not the " + password);
        signAgain.confirm("nor is this");
        assertThat(network.owner()
                        .sql("select count(*) from access_entry where staff_id = ? and deed = 'SIGN_IN_FAILED'")
                        .param(surgeon)
                        .query(Integer.class)
                        .single())
                .isEqualTo(2);
    }

    /** The picture of the codes may still be on a screen that somebody else found. */
    @Test
    void asksBeforeCodesThatWereBegunLongAgoAreConfirmed() {
        sit(Duration.ofMinutes(1));
        network.as(surgeon, factors::begin);
        sit(Duration.ofMinutes(11));
        assertThatThrownBy(() -> network.as(surgeon, () -> factors.confirm("000000")))
                .isInstanceOf(AccessDeniedException.class);
    }

    /** Before a screen, with a password that was taken so long ago. */
    private void sit(Duration ago) {
        var request = new MockHttpServletRequest();
        request.setRemoteAddr("192.0.2." + (surgeon.hashCode() & 0x7f));
        RequestContextHolder.setRequestAttributes(new ServletRequestAttributes(request));
        var factor = FactorGrantedAuthority.withAuthority(FactorGrantedAuthority.PASSWORD_AUTHORITY)
                .issuedAt(clock.instant().minus(ago))
                .build();
        SecurityContextHolder.getContext()
                .setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                        network.login(surgeon), null, List.of(factor)));
    }
}
