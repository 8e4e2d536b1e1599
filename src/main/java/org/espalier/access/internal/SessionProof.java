package org.espalier.access.internal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.SignAgain;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/**
 * Keeps the time of the last proof in the session; the first is the time at which the password or passkey was taken.
 */
@Component
class SessionProof implements SignAgain {

    private static final String LAST_PROOF = SessionProof.class.getName();

    private final AuthenticationProvider passwords;
    private final JdbcSignInRepository signIns;
    private final Duration lasts;
    private final Clock clock;

    SessionProof(
            UserDetailsService staff,
            PasswordEncoder encoder,
            JdbcSignInRepository signIns,
            AccessProperties properties,
            Clock clock) {
        var provider = new DaoAuthenticationProvider(staff);
        provider.setPasswordEncoder(encoder);
        passwords = new ThrottledSignIn(provider, signIns, clock);
        this.signIns = signIns;
        lasts = properties.session().proof();
        this.clock = clock;
    }

    @Override
    public boolean isNeeded() {
        return signedIn()
                .map(person -> last(person).isBefore(clock.instant().minus(lasts)))
                .orElse(false);
    }

    @Override
    public Answer confirm(String password) {
        var request = request().orElseThrow(() -> new IllegalStateException("no screen asks"));
        var name = signedIn()
                .orElseThrow(() -> new IllegalStateException("nobody is signed in"))
                .getName();
        var attempt = UsernamePasswordAuthenticationToken.unauthenticated(name, password);
        attempt.setDetails(new WebAuthenticationDetails(request.getRequest()));
        try {
            passwords.authenticate(attempt);
            keep(request);
            return Answer.CONFIRMED;
        } catch (AuthenticationException refused) {
            signIns.log(name, false, clock.instant());
            return refused instanceof TooManyAttempts ? Answer.WAIT : Answer.WRONG;
        }
    }

    @Override
    public void prove() {
        if (isNeeded()) {
            throw new AccessDeniedException("the last proof is too long ago");
        }
        request().ifPresent(this::keep);
    }

    private void keep(ServletRequestAttributes request) {
        request.setAttribute(LAST_PROOF, clock.instant(), ServletRequestAttributes.SCOPE_SESSION);
    }

    private static Instant last(Authentication person) {
        var signedIn = person.getAuthorities().stream()
                .filter(FactorGrantedAuthority.class::isInstance)
                .map(factor -> ((FactorGrantedAuthority) factor).getIssuedAt());
        var kept = request()
                .map(request -> (Instant) request.getAttribute(LAST_PROOF, ServletRequestAttributes.SCOPE_SESSION));
        return Stream.concat(signedIn, kept.stream())
                .max(Comparator.naturalOrder())
                .orElse(Instant.EPOCH);
    }

    /** The person at a screen, also when a thread works for them; empty for a job, which nobody sits before. */
    private static Optional<Authentication> signedIn() {
        return Optional.ofNullable(SecurityContextHolder.getContext().getAuthentication());
    }

    /** The request of a screen; a thread that works for a page has none. */
    private static Optional<ServletRequestAttributes> request() {
        return RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes request
                ? Optional.of(request)
                : Optional.empty();
    }
}
