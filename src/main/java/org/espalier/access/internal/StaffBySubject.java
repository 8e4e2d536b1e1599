package org.espalier.access.internal;

import java.util.List;
import java.util.Optional;
import org.espalier.access.SecondStep;
import org.jspecify.annotations.Nullable;
import org.springframework.security.oauth2.client.oidc.userinfo.OidcUserRequest;
import org.springframework.security.oauth2.client.userinfo.OAuth2UserService;
import org.springframework.security.oauth2.core.OAuth2AuthenticationException;
import org.springframework.security.oauth2.core.OAuth2Error;
import org.springframework.security.oauth2.core.oidc.OidcIdToken;
import org.springframework.security.oauth2.core.oidc.user.OidcUser;

/**
 * Finds the member of staff whom the operator linked to issuer and subject; nobody is added by signing in. The
 * provider's word that several factors were given (amr {@code mfa}, RFC 8176) stands for the second one here.
 */
final class StaffBySubject implements OAuth2UserService<OidcUserRequest, OidcUser> {

    private static final String SEVERAL_FACTORS = "mfa";

    private final JdbcSignInRepository signIns;

    StaffBySubject(JdbcSignInRepository signIns) {
        this.signIns = signIns;
    }

    @Override
    public OidcUser loadUser(OidcUserRequest request) {
        var token = request.getIdToken();
        return signIns.bySubject(String.valueOf(token.getIssuer()), token.getSubject())
                .map(staff -> new SignedOnStaff(staff, token, stepOf(staff, token)))
                .orElseThrow(() -> new OAuth2AuthenticationException(new OAuth2Error("not_linked")));
    }

    private static SecondStep.@Nullable Kind stepOf(StaffPrincipal staff, OidcIdToken token) {
        var means = Optional.ofNullable(token.getClaimAsStringList("amr")).orElse(List.of());
        return means.contains(SEVERAL_FACTORS) ? null : staff.secondStep().orElse(null);
    }
}
