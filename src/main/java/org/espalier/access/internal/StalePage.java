package org.espalier.access.internal;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.access.AccessDeniedHandlerImpl;
import org.springframework.security.web.csrf.CsrfException;

/** A login page that was open for longer than its session is shown afresh, with a word why; all else is refused. */
record StalePage(String login) implements AccessDeniedHandler {

    private static final AccessDeniedHandler REFUSE = new AccessDeniedHandlerImpl();

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refusal)
            throws IOException, ServletException {
        var page = request.getContextPath() + login;
        if (refusal instanceof CsrfException && page.equals(request.getRequestURI())) {
            response.sendRedirect(page + "?again");
        } else {
            REFUSE.handle(request, response, refusal);
        }
    }
}
