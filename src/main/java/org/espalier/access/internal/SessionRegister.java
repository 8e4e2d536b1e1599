package org.espalier.access.internal;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.Serializable;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SessionHere;
import org.espalier.access.SignedInStaff;
import org.espalier.platform.Ids;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.web.authentication.logout.LogoutHandler;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.util.WebUtils;

/**
 * Writes each session of a person into the database once they are known, and asks there at each request whether it
 * still stands.
 */
@Component
class SessionRegister implements SessionHere, LogoutHandler {

    private static final String WRITTEN = SessionRegister.class.getName();

    private final JdbcSignInRepository signIns;
    private final Ids ids;
    private final Clock clock;

    SessionRegister(JdbcSignInRepository signIns, Ids ids, Clock clock) {
        this.signIns = signIns;
        this.ids = ids;
        this.clock = clock;
    }

    /** What the session remembers of its row. */
    private record Written(UUID id, UUID staff) implements Serializable {}

    /** Whether the session may go on; one that nobody is signed in to may. */
    boolean isOpen(HttpSession session, HttpServletRequest request, boolean isDeed, Instant now) {
        var staff = staffOf(session);
        if (staff.isEmpty()) {
            return true;
        }
        Written written;
        synchronized (WebUtils.getSessionMutex(session)) {
            written = session.getAttribute(WRITTEN) instanceof Written kept ? kept : null;
            if (written == null || !written.staff().equals(staff.get())) {
                written = new Written(ids.next(), staff.get());
                signIns.beginSession(written.id(), written.staff(), device(request), now);
                session.setAttribute(WRITTEN, written);
                return true;
            }
        }
        return signIns.useSession(written.id(), isDeed, now);
    }

    @Override
    public Optional<UUID> id() {
        return Optional.ofNullable(RequestContextHolder.getRequestAttributes())
                .map(request -> request.getAttribute(WRITTEN, RequestAttributes.SCOPE_SESSION))
                .map(written -> ((Written) written).id());
    }

    @Override
    public void logout(
            HttpServletRequest request, HttpServletResponse response, @Nullable Authentication authentication) {
        var session = request.getSession(false);
        if (session != null && session.getAttribute(WRITTEN) instanceof Written written) {
            signIns.endSession(written.id(), clock.instant());
        }
    }

    static String device(HttpServletRequest request) {
        return Device.of(request.getHeader(HttpHeaders.USER_AGENT));
    }

    private static Optional<UUID> staffOf(HttpSession session) {
        return session.getAttribute(HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY)
                                instanceof SecurityContext context
                        && context.getAuthentication() != null
                        && context.getAuthentication().getPrincipal() instanceof SignedInStaff staff
                ? Optional.of(staff.staff().value())
                : Optional.empty();
    }
}
