package org.espalier.access.internal;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.web.webauthn.api.AuthenticatorSelectionCriteria;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRpEntity;
import org.springframework.security.web.webauthn.api.ResidentKeyRequirement;
import org.springframework.security.web.webauthn.api.UserVerificationRequirement;
import org.springframework.security.web.webauthn.management.WebAuthnRelyingPartyOperations;
import org.springframework.security.web.webauthn.management.Webauthn4JRelyingPartyOperations;

/**
 * A passkey is something held and, since the person is always verified, something known or a trait: two factors at
 * once.
 */
@Configuration
class PasskeyConfiguration {

    @Bean
    WebAuthnRelyingPartyOperations passkeyOperations(
            PasskeyOwners owners, JdbcPasskeys passkeys, AccessProperties properties) {
        var house = PublicKeyCredentialRpEntity.builder()
                .id(properties.passkey().id())
                .name("Espalier")
                .build();
        var operations = new Webauthn4JRelyingPartyOperations(
                owners, passkeys, house, properties.passkey().origins());
        operations.setCustomizeCreationOptions(
                options -> options.authenticatorSelection(AuthenticatorSelectionCriteria.builder()
                        .userVerification(UserVerificationRequirement.REQUIRED)
                        .residentKey(ResidentKeyRequirement.REQUIRED)
                        .build()));
        operations.setCustomizeRequestOptions(
                options -> options.userVerification(UserVerificationRequirement.REQUIRED));
        return operations;
    }
}
