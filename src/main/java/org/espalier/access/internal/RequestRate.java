package org.espalier.access.internal;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.espalier.access.AccessLog;
import org.espalier.access.SignedInStaff;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Slows whoever asks faster than a person or an archive at work does: a copied key or a script in a session cannot read
 * a hospital out in minutes. Counted by person and node; a screen costs more than a piece of a film. The first refusal
 * is written to the access log.
 */
final class RequestRate extends OncePerRequestFilter {

    static final int COST_OF_A_SCREEN = 5;

    private static final int COST_OF_A_PIECE = 1;

    private final AccessProperties.Rate limits;
    private final AccessLog log;
    private final Clock clock;
    private final Map<UUID, Allowance> left = new ConcurrentHashMap<>();

    RequestRate(AccessProperties.Rate limits, AccessLog log, Clock clock) {
        this.limits = limits;
        this.log = log;
        this.clock = clock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var caller = SecurityContextHolder.getContext().getAuthentication();
        if (caller == null || !(caller.getPrincipal() instanceof SignedInStaff staff)) {
            chain.doFilter(request, response);
            return;
        }
        var now = clock.instant();
        var answer = left.computeIfAbsent(
                        staff.staff().value(), id -> new Allowance(limits.perSecond(), limits.burst(), now))
                .take(cost(request), now);
        if (answer == Allowance.Answer.GRANTED) {
            chain.doFilter(request, response);
            return;
        }
        if (answer == Allowance.Answer.RAN_OUT) {
            log.denied("too many requests");
        }
        response.setHeader(HttpHeaders.RETRY_AFTER, "5");
        response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
    }

    private static int cost(HttpServletRequest request) {
        return request.getRequestURI().startsWith(request.getContextPath() + "/api/")
                        || request.getRequestURI().startsWith(request.getContextPath() + "/dicom-web/")
                ? COST_OF_A_PIECE
                : COST_OF_A_SCREEN;
    }
}
