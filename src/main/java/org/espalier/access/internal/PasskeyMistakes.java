package org.espalier.access.internal;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.springframework.web.filter.OncePerRequestFilter;

/** A request about a passkey that lacks what it must say is the sender's mistake, not the house's failure. */
final class PasskeyMistakes extends OncePerRequestFilter {

    static final RequestMatcher PASSKEYS = PathPatternRequestMatcher.pathPattern("/webauthn/**");

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !PASSKEYS.matches(request);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            chain.doFilter(request, response);
        } catch (IllegalArgumentException incomplete) {
            response.setStatus(HttpStatus.BAD_REQUEST.value());
        }
    }
}
