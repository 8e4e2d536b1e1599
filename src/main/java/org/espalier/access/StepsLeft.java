package org.espalier.access;

import java.util.Optional;
import java.util.Set;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;

/** Reads from the session's factors whether the caller is all the way in. */
public final class StepsLeft {

    /** A code by time, or a recovery code. */
    public static final String CODE_FACTOR = "TOTP";

    /** A passkey is two factors at once: something held, and the person verified by it. */
    private static final Set<String> ENOUGH =
            Set.of(FactorGrantedAuthority.WEBAUTHN_AUTHORITY, "FACTOR_" + CODE_FACTOR);

    private StepsLeft() {}

    /** What the caller must still do; empty for whoever is in, and for work that comes from no session. */
    public static Optional<SecondStep.Kind> ofCaller() {
        return Optional.ofNullable(SecurityContextHolder.getContext().getAuthentication())
                .filter(session -> session.getAuthorities().stream()
                        .noneMatch(factor -> ENOUGH.contains(String.valueOf(factor.getAuthority()))))
                .map(Authentication::getPrincipal)
                .filter(SignedInStaff.class::isInstance)
                .flatMap(staff -> ((SignedInStaff) staff).secondStep());
    }
}
