package org.espalier.access.internal;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.espalier.access.SiteTokenSecret;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Signs a request in by the site token it carries, for that request alone. */
final class SiteTokenFilter extends OncePerRequestFilter {

    private static final String SCHEME = "Bearer ";

    private final JdbcSignInRepository signIns;

    SiteTokenFilter(JdbcSignInRepository signIns) {
        this.signIns = signIns;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        archive(request).ifPresent(archive -> {
            var context = SecurityContextHolder.createEmptyContext();
            context.setAuthentication(archive);
            SecurityContextHolder.setContext(context);
        });
        chain.doFilter(request, response);
    }

    private Optional<Authentication> archive(HttpServletRequest request) {
        return Optional.ofNullable(request.getHeader(HttpHeaders.AUTHORIZATION))
                .filter(header -> header.regionMatches(true, 0, SCHEME, 0, SCHEME.length()))
                .map(header -> header.substring(SCHEME.length()).strip())
                .flatMap(secret -> signIns.byToken(new SiteTokenSecret(secret).sha256()));
    }
}
