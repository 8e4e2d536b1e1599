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
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.Authentication;
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
        lasts = properties.session().proof();
        this.clock = clock;
    }

    @Override
    public boolean isNeeded() {
        return request()
                .map(request -> last(request).isBefore(clock.instant().minus(lasts)))
                .orElse(false);
    }

    @Override
    public Answer confirm(String password) {
        var request = request().orElseThrow(() -> new IllegalStateException("no screen asks"));
        var attempt = UsernamePasswordAuthenticationToken.unauthenticated(caller().getName(), password);
        attempt.setDetails(new WebAuthenticationDetails(request.getRequest()));
        try {
            passwords.authenticate(attempt);
            keep(request);
            return Answer.CONFIRMED;
        } catch (TooManyAttempts wait) {
            return Answer.WAIT;
        } catch (BadCredentialsException wrong) {
            return Answer.WRONG;
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

    private static Instant last(ServletRequestAttributes request) {
        var signedIn = caller().getAuthorities().stream()
                .filter(FactorGrantedAuthority.class::isInstance)
                .map(factor -> ((FactorGrantedAuthority) factor).getIssuedAt());
        var kept = request.getAttribute(LAST_PROOF, ServletRequestAttributes.SCOPE_SESSION);
        return Stream.concat(signedIn, Stream.ofNullable(kept).map(Instant.class::cast))
                .max(Comparator.naturalOrder())
                .orElse(Instant.EPOCH);
    }

    private static Authentication caller() {
        return Optional.ofNullable(SecurityContextHolder.getContext().getAuthentication())
                .orElseThrow(() -> new IllegalStateException("nobody is signed in"));
    }

    /** The request of a screen; empty for a job, and for whatever else comes from no screen. */
    private static Optional<ServletRequestAttributes> request() {
        return RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes request
                ? Optional.of(request)
                : Optional.empty();
    }
}
