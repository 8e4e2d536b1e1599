package org.espalier.access.internal;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.access.SecondStep;
import org.espalier.access.SignedInStaff;
import org.espalier.access.StaffId;
import org.espalier.platform.Caller;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.oauth2.core.oidc.OidcIdToken;
import org.springframework.security.oauth2.core.oidc.OidcUserInfo;
import org.springframework.security.oauth2.core.oidc.user.OidcUser;

/** Who a session belongs to that began at the provider; of what the provider says only the token is kept. */
final class SignedOnStaff implements OidcUser, SignedInStaff {

    private static final long serialVersionUID = 1;

    private final StaffPrincipal staff;
    private final OidcIdToken token;
    private final SecondStep.@Nullable Kind step;

    SignedOnStaff(StaffPrincipal staff, OidcIdToken token, SecondStep.@Nullable Kind step) {
        this.staff = staff;
        this.token = token;
        this.step = step;
    }

    @Override
    public StaffId staff() {
        return staff.staff();
    }

    /** There is no password to change. */
    @Override
    public boolean mustChangePassword() {
        return false;
    }

    @Override
    public Optional<SecondStep.Kind> secondStep() {
        return Optional.ofNullable(step);
    }

    @Override
    public Caller caller() {
        return staff.caller();
    }

    @Override
    public Map<String, Object> getClaims() {
        return token.getClaims();
    }

    @Override
    public @Nullable OidcUserInfo getUserInfo() {
        return null;
    }

    @Override
    public OidcIdToken getIdToken() {
        return token;
    }

    @Override
    public Map<String, Object> getAttributes() {
        return token.getClaims();
    }

    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return List.of();
    }

    @Override
    public String getName() {
        return staff.getName();
    }

    /** The id alone: a principal may reach a log. */
    @Override
    public String toString() {
        return staff.toString();
    }
}
