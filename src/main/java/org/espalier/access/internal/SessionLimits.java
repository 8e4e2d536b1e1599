package org.espalier.access.internal;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Ends a session that nobody used for a while, that lasted too long, or that was ended from elsewhere. A page left open
 * sends signs of life on its own; these do not count as use, and they are what brings the end about.
 */
final class SessionLimits extends OncePerRequestFilter {

    private static final String LAST_DEED = SessionLimits.class.getName();

    private final AccessProperties.Session limits;
    private final SessionRegister register;
    private final Clock clock;

    SessionLimits(AccessProperties.Session limits, SessionRegister register, Clock clock) {
        this.limits = limits;
        this.register = register;
        this.clock = clock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var session = request.getSession(false);
        if (session != null) {
            var now = clock.instant();
            boolean isDeed = isDeed(request);
            if (isOver(session, now) || !register.isOpen(session, request, isDeed, now)) {
                session.invalidate();
            } else if (isDeed) {
                session.setAttribute(LAST_DEED, now);
            }
        }
        chain.doFilter(request, response);
    }

    private boolean isOver(HttpSession session, Instant now) {
        var made = Instant.ofEpochMilli(session.getCreationTime());
        var used = session.getAttribute(LAST_DEED) instanceof Instant last ? last : made;
        return isLonger(used, now, limits.idle()) || isLonger(made, now, limits.whole());
    }

    private static boolean isLonger(Instant from, Instant to, Duration limit) {
        return Duration.between(from, to).compareTo(limit) > 0;
    }

    /** Whether a person is behind the request; signs of life and the opening of a push channel come from the page. */
    private static boolean isDeed(HttpServletRequest request) {
        var kind = request.getParameter("v-r");
        return !"heartbeat".equals(kind) && !"push".equals(kind);
    }
}
