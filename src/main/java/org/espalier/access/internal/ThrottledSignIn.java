package org.espalier.access.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.CredentialsExpiredException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.WebAuthenticationDetails;

/**
 * Counts attempts by name and by source address before it lets the password be looked at. A name that nobody has is
 * counted and slowed like any other, so that neither the answer nor its time tells whether it exists.
 */
final class ThrottledSignIn implements AuthenticationProvider {

    /** A first password that lies about for longer has been read by others (ASVS 5.0.0, 6.4.1). */
    static final Duration FIRST_PASSWORD_LASTS = Duration.ofDays(3);

    private final AuthenticationProvider passwords;
    private final JdbcSignInRepository signIns;
    private final Clock clock;

    ThrottledSignIn(AuthenticationProvider passwords, JdbcSignInRepository signIns, Clock clock) {
        this.passwords = passwords;
        this.signIns = signIns;
        this.clock = clock;
    }

    @Override
    public @Nullable Authentication authenticate(Authentication attempt) {
        var account = key(attempt.getName().toLowerCase(Locale.ROOT));
        var source = key(attempt.getDetails() instanceof WebAuthenticationDetails web ? web.getRemoteAddress() : "");
        var wait = signIns.begin(account, source, clock.instant());
        if (wait.isPositive()) {
            throw new TooManyAttempts(wait);
        }
        var signedIn = passwords.authenticate(attempt);
        if (signedIn != null) {
            refuseOldFirstPassword(signedIn);
            signIns.end(account, source);
        }
        return signedIn;
    }

    /** Only whoever knows the password learns that it is over. */
    private void refuseOldFirstPassword(Authentication signedIn) {
        if (signedIn.getPrincipal() instanceof StaffPrincipal staff
                && staff.mustChangePassword()
                && signIns.firstPasswordSince(staff.staff())
                        .filter(since -> since.isBefore(clock.instant().minus(FIRST_PASSWORD_LASTS)))
                        .isPresent()) {
            throw new CredentialsExpiredException("the first password was not used in time");
        }
    }

    @Override
    public boolean supports(Class<?> authentication) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(authentication);
    }

    static String key(String text) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
