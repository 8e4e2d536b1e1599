package org.espalier.access.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.SignAgain;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.web.webauthn.api.AuthenticatorTransport;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.CredentialRecord;
import org.springframework.security.web.webauthn.api.ImmutableCredentialRecord;
import org.springframework.security.web.webauthn.api.ImmutablePublicKeyCose;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialType;
import org.springframework.security.web.webauthn.management.UserCredentialRepository;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/**
 * Passkeys. Whoever is signed in sees and removes their own; the database's functions serve whoever is about to sign
 * in.
 */
@Repository
@Transactional
class JdbcPasskeys implements UserCredentialRepository {

    private static final String COLUMNS = """
            credential, staff_id, public_key, signature_count, verified, backup_eligible, backup_state, transports,
            attestation, client_data, label, created_at, last_used_at
            """;
    private static final String BY_CREDENTIAL = "select " + COLUMNS + " from passkey_by_credential(:credential)";
    private static final String OWN = "select " + COLUMNS + " from passkey where staff_id = :staff order by created_at";
    private static final String REMOVE = "delete from passkey where credential = :credential";
    private static final String USED = "select note_passkey_use(:credential, :count, :backup, :at)";
    private static final String ADD = "insert into passkey (" + COLUMNS + """
            ) values (:credential, :staff, :key, :count, :verified, :eligible, :backup, :transports, :attestation,
                :client, :label, :created, :at)""";

    private final JdbcClient jdbc;
    private final SignAgain signAgain;

    JdbcPasskeys(JdbcClient jdbc, SignAgain signAgain) {
        this.jdbc = jdbc;
        this.signAgain = signAgain;
    }

    @Override
    public void delete(Bytes credential) {
        signAgain.prove();
        jdbc.sql(REMOVE).param("credential", credential.getBytes()).update();
    }

    @Override
    public void save(CredentialRecord passkey) {
        if (!noteUse(passkey)) {
            signAgain.prove();
            add(passkey);
        }
    }

    @Override
    public @Nullable CredentialRecord findByCredentialId(Bytes credential) {
        return jdbc.sql(BY_CREDENTIAL)
                .param("credential", credential.getBytes())
                .query(JdbcPasskeys::toRecord)
                .optional()
                .orElse(null);
    }

    @Override
    public List<CredentialRecord> findByUserId(Bytes handle) {
        return jdbc.sql(OWN)
                .param("staff", StaffPrincipal.staffOf(handle))
                .query(JdbcPasskeys::toRecord)
                .list();
    }

    private boolean noteUse(CredentialRecord passkey) {
        return jdbc.sql(USED)
                .param("credential", passkey.getCredentialId().getBytes())
                .param("count", passkey.getSignatureCount())
                .param("backup", passkey.isBackupState())
                .param("at", Timestamp.from(passkey.getLastUsed()))
                .query((row, number) -> row.getBoolean(1))
                .single();
    }

    private void add(CredentialRecord passkey) {
        jdbc.sql(ADD)
                .param("credential", passkey.getCredentialId().getBytes())
                .param("staff", StaffPrincipal.staffOf(passkey.getUserEntityUserId()))
                .param("key", passkey.getPublicKey().getBytes())
                .param("count", passkey.getSignatureCount())
                .param("verified", passkey.isUvInitialized())
                .param("eligible", passkey.isBackupEligible())
                .param("backup", passkey.isBackupState())
                .param("transports", toText(passkey.getTransports()))
                .param("attestation", bytes(passkey.getAttestationObject()))
                .param("client", bytes(passkey.getAttestationClientDataJSON()))
                .param("label", device())
                .param("created", Timestamp.from(passkey.getCreated()))
                .param("at", Timestamp.from(passkey.getLastUsed()))
                .update();
    }

    /** Whoever signs in by it later is to know it again. */
    private static String device() {
        return RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes request
                ? SessionRegister.device(request.getRequest())
                : Device.UNKNOWN;
    }

    private static CredentialRecord toRecord(ResultSet row, int number) throws SQLException {
        return ImmutableCredentialRecord.builder()
                .credentialType(PublicKeyCredentialType.PUBLIC_KEY)
                .credentialId(new Bytes(row.getBytes("credential")))
                .userEntityUserId(StaffPrincipal.handle(row.getObject("staff_id", UUID.class)))
                .publicKey(new ImmutablePublicKeyCose(row.getBytes("public_key")))
                .signatureCount(row.getLong("signature_count"))
                .uvInitialized(row.getBoolean("verified"))
                .backupEligible(row.getBoolean("backup_eligible"))
                .backupState(row.getBoolean("backup_state"))
                .transports(toTransports(row.getString("transports")))
                .attestationObject(new Bytes(row.getBytes("attestation")))
                .attestationClientDataJSON(new Bytes(row.getBytes("client_data")))
                .label(row.getString("label"))
                .created(row.getTimestamp("created_at").toInstant())
                .lastUsed(row.getTimestamp("last_used_at").toInstant())
                .build();
    }

    private static byte[] bytes(@Nullable Bytes value) {
        return value == null ? new byte[0] : value.getBytes();
    }

    private static String toText(Set<AuthenticatorTransport> transports) {
        return transports.stream()
                .map(AuthenticatorTransport::getValue)
                .sorted()
                .collect(Collectors.joining(" "));
    }

    private static Set<AuthenticatorTransport> toTransports(String text) {
        return Arrays.stream(text.split(" "))
                .filter(value -> !value.isEmpty())
                .map(AuthenticatorTransport::valueOf)
                .collect(Collectors.toSet());
    }
}
