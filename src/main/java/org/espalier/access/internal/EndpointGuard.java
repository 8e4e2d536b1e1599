package org.espalier.access.internal;

import java.util.List;
import java.util.function.Supplier;
import org.espalier.access.AccessLog;
import org.espalier.access.Permissions;
import org.espalier.access.TokenScope;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.authorization.AuthorizationResult;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.stereotype.Component;

/** Asks the table of permissions about each request that is not a screen. */
@Component
class EndpointGuard implements AuthorizationManager<RequestAuthorizationContext> {

    private final Permissions permissions;
    private final AccessLog log;

    EndpointGuard(Permissions permissions, AccessLog log) {
        this.permissions = permissions;
        this.log = log;
    }

    @Override
    public AuthorizationResult authorize(
            Supplier<? extends @Nullable Authentication> authentication, RequestAuthorizationContext context) {
        var request = context.getRequest();
        var method = "HEAD".equals(request.getMethod()) ? "GET" : request.getMethod();
        var path = request.getRequestURI().substring(request.getContextPath().length());
        boolean allowed = permissions.allowsRequest(method, path) && !isOutOfScope(method);
        if (!allowed) {
            log.denied(method + " " + path.replaceAll("[0-9a-f-]{36}|[0-9.]{12,}", "*"));
        }
        return new AuthorizationDecision(allowed);
    }

    /** A key opens what it was issued for; a person's session has no scopes. */
    private static boolean isOutOfScope(String method) {
        var session = SecurityContextHolder.getContext().getAuthentication();
        var scopes = session == null ? List.<String>of() : scopes(session);
        return !scopes.isEmpty()
                && !scopes.contains(TokenScope.neededFor(method).authority());
    }

    private static List<String> scopes(Authentication session) {
        return session.getAuthorities().stream()
                .map(authority -> String.valueOf(authority.getAuthority()))
                .filter(name -> name.startsWith("SCOPE_"))
                .toList();
    }
}
