package org.espalier.access.internal;

import java.nio.ByteBuffer;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SecondStep;
import org.espalier.access.SignedInStaff;
import org.espalier.access.StaffId;
import org.espalier.platform.Caller;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.CredentialsContainer;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialUserEntity;

/**
 * Who a session or request belongs to, however they signed in. Carries no roles: these are read afresh at each
 * question.
 */
final class StaffPrincipal implements UserDetails, PublicKeyCredentialUserEntity, SignedInStaff, CredentialsContainer {

    private static final long serialVersionUID = 1;

    private final UUID staff;
    private final String login;
    private final String displayName;
    private final boolean mustChangePassword;
    private final SecondStep.@Nullable Kind secondStep;
    private @Nullable String hash;

    StaffPrincipal(
            StaffId staff,
            String login,
            String displayName,
            boolean mustChangePassword,
            SecondStep.@Nullable Kind secondStep,
            @Nullable String hash) {
        this.staff = staff.value();
        this.login = login;
        this.displayName = displayName;
        this.mustChangePassword = mustChangePassword;
        this.secondStep = secondStep;
        this.hash = hash;
    }

    /** The handle under which an authenticator keeps its passkey: the id of the staff, which says nothing outside. */
    static Bytes handle(UUID staff) {
        return new Bytes(ByteBuffer.allocate(2 * Long.BYTES)
                .putLong(staff.getMostSignificantBits())
                .putLong(staff.getLeastSignificantBits())
                .array());
    }

    static UUID staffOf(Bytes handle) {
        var bytes = ByteBuffer.wrap(handle.getBytes());
        return new UUID(bytes.getLong(), bytes.getLong());
    }

    @Override
    public StaffId staff() {
        return new StaffId(staff);
    }

    @Override
    public boolean mustChangePassword() {
        return mustChangePassword;
    }

    @Override
    public Optional<SecondStep.Kind> secondStep() {
        return Optional.ofNullable(secondStep);
    }

    @Override
    public Caller caller() {
        return new Caller.Staff(staff);
    }

    @Override
    public String getUsername() {
        return login;
    }

    @Override
    public @Nullable String getPassword() {
        return hash;
    }

    @Override
    public void eraseCredentials() {
        hash = null;
    }

    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return List.of();
    }

    @Override
    public String getName() {
        return login;
    }

    @Override
    public Bytes getId() {
        return handle(staff);
    }

    @Override
    public String getDisplayName() {
        return displayName;
    }

    /** The id alone: a principal may reach a log. */
    @Override
    public String toString() {
        return staff.toString();
    }
}
