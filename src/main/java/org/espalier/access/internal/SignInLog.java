package org.espalier.access.internal;

import java.time.Clock;
import org.springframework.context.event.EventListener;
import org.springframework.security.authentication.event.AbstractAuthenticationFailureEvent;
import org.springframework.security.authentication.event.AuthenticationSuccessEvent;
import org.springframework.stereotype.Component;

/** Writes each sign-in by a person, and each that failed, to the access log. */
@Component
class SignInLog {

    private final JdbcSignInRepository signIns;
    private final Clock clock;

    SignInLog(JdbcSignInRepository signIns, Clock clock) {
        this.signIns = signIns;
        this.clock = clock;
    }

    @EventListener
    void signedIn(AuthenticationSuccessEvent event) {
        signIns.log(event.getAuthentication().getName(), true, clock.instant());
    }

    @EventListener
    void failed(AbstractAuthenticationFailureEvent event) {
        signIns.log(event.getAuthentication().getName(), false, clock.instant());
    }
}
