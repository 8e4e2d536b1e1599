package org.espalier.platform;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.MDC;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Gives each request an id that its log lines and its answer carry; it says nothing of who asked or about whom. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class RequestIdFilter extends OncePerRequestFilter {

    private static final String NAME = "request";

    private final Ids ids;

    RequestIdFilter(Ids ids) {
        this.ids = ids;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var id = ids.next().toString();
        response.setHeader("X-Request-Id", id);
        try (var here = MDC.putCloseable(NAME, id)) {
            chain.doFilter(request, response);
        }
    }
}
