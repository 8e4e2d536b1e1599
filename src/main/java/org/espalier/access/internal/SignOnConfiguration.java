package org.espalier.access.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.espalier.access.SingleSignOn;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.oauth2.client.oidc.userinfo.OidcUserRequest;
import org.springframework.security.oauth2.client.registration.ClientRegistrationRepository;
import org.springframework.security.oauth2.client.registration.ClientRegistrations;
import org.springframework.security.oauth2.client.registration.InMemoryClientRegistrationRepository;
import org.springframework.security.oauth2.client.registration.SupplierClientRegistrationRepository;
import org.springframework.security.oauth2.client.userinfo.OAuth2UserService;
import org.springframework.security.oauth2.core.oidc.OidcScopes;
import org.springframework.security.oauth2.core.oidc.user.OidcUser;

/**
 * Single sign-on by OpenID Connect, where a provider is named: the code flow with proof of the code's owner. The
 * provider is asked for its addresses at the first use, so that this program starts without it.
 */
@Configuration
@ConditionalOnProperty("espalier.access.sign-on.issuer")
class SignOnConfiguration {

    static final String PROVIDER = "house";

    @Bean
    SingleSignOn singleSignOn(
            @Value("${espalier.access.sign-on.issuer}") String issuer,
            @Value("${espalier.access.sign-on.name:Single sign-on}") String name) {
        return new SingleSignOn(issuer, name, "oauth2/authorization/" + PROVIDER);
    }

    @Bean
    ClientRegistrationRepository providers(
            SingleSignOn provider,
            @Value("${espalier.access.sign-on.client-id}") String id,
            @Value("${espalier.access.sign-on.client-secret:}") String secret,
            @Value("${espalier.access.sign-on.client-secret-file:}") String secretFile)
            throws IOException {
        var kept = secretFile.isBlank()
                ? secret
                : Files.readString(Path.of(secretFile)).strip();
        return new SupplierClientRegistrationRepository(
                () -> new InMemoryClientRegistrationRepository(ClientRegistrations.fromIssuerLocation(provider.issuer())
                        .registrationId(PROVIDER)
                        .clientId(id)
                        .clientSecret(kept)
                        .scope(OidcScopes.OPENID)
                        .build()));
    }

    @Bean
    OAuth2UserService<OidcUserRequest, OidcUser> staffBySubject(JdbcSignInRepository signIns) {
        return new StaffBySubject(signIns);
    }
}
