package org.espalier.access.internal;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.authentication.CredentialsExpiredException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.oauth2.core.OAuth2AuthenticationException;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;

/** Leads back to the login page, which says only that it failed, or how long to wait. */
record SignInRefusal(String login) implements AuthenticationFailureHandler {

    @Override
    public void onAuthenticationFailure(
            HttpServletRequest request, HttpServletResponse response, AuthenticationException refusal)
            throws IOException {
        response.sendRedirect(request.getContextPath() + login + "?" + why(refusal));
    }

    private static String why(AuthenticationException refusal) {
        return switch (refusal) {
            case TooManyAttempts attempts ->
                "wait=" + Math.max(1, attempts.left().toSeconds());
            case CredentialsExpiredException over -> "expired";
            case OAuth2AuthenticationException provider -> "sign-on";
            default -> "error";
        };
    }
}
