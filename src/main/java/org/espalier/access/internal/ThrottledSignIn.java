package org.espalier.access.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.HexFormat;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.WebAuthenticationDetails;

/**
 * Counts attempts by name and by source address before it lets the password be looked at. A name that nobody has is counted
 * and slowed like any other, so that neither the answer nor its time tells whether it exists.
 */
final class ThrottledSignIn implements AuthenticationProvider {

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
            signIns.end(account, source);
        }
        return signedIn;
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
