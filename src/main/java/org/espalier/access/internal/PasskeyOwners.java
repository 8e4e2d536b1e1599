package org.espalier.access.internal;

import org.jspecify.annotations.Nullable;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialUserEntity;
import org.springframework.security.web.webauthn.management.PublicKeyCredentialUserEntityRepository;
import org.springframework.stereotype.Component;

/** Staff as the owners of passkeys: there is nothing to keep beside the staff themselves. */
@Component
class PasskeyOwners implements PublicKeyCredentialUserEntityRepository {

    private final JdbcSignInRepository signIns;

    PasskeyOwners(JdbcSignInRepository signIns) {
        this.signIns = signIns;
    }

    @Override
    public @Nullable PublicKeyCredentialUserEntity findById(Bytes handle) {
        return handle.getBytes().length == 2 * Long.BYTES
                ? signIns.byStaff(StaffPrincipal.staffOf(handle)).orElse(null)
                : null;
    }

    @Override
    public @Nullable PublicKeyCredentialUserEntity findByUsername(String login) {
        return signIns.byLogin(login).orElse(null);
    }

    @Override
    public void save(PublicKeyCredentialUserEntity owner) {
        throw new UnsupportedOperationException("staff are added by the operator");
    }

    @Override
    public void delete(Bytes handle) {
        throw new UnsupportedOperationException("staff are never deleted");
    }
}
