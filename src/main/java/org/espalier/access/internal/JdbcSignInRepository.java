package org.espalier.access.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.access.SecondStep;
import org.espalier.access.StaffId;
import org.espalier.access.TokenScope;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Asks the database's own functions, for nobody is signed in yet. */
@Repository
@Transactional(propagation = Propagation.REQUIRES_NEW)
class JdbcSignInRepository {

    private static final String BY_LOGIN =
            "select staff_id, name, hash, must_change, second_step_of(staff_id) as step from sign_in_of(:login)";
    private static final String BY_STAFF =
            "select login, name, must_change, second_step_of(:staff) as step from sign_in_by_staff(:staff)";
    private static final String BY_SUBJECT =
            "select staff_id from staff_by_subject(:issuer, :subject) as staff_id where staff_id is not null";
    private static final String BY_TOKEN = "select staff_id, name, scopes from site_token_holder(:hash)";
    private static final String BEGIN = "select begin_sign_in(:account, :source, :at)";
    private static final String END = "select end_sign_in(:account, :source)";
    private static final String BEGIN_SESSION = "select begin_person_session(:id, :staff, :device, :at)";
    private static final String USE_SESSION = "select use_person_session(:id, :deed, :at)";
    private static final String END_SESSION = "select end_person_session(:id, :at)";
    private static final String FIRST_PASSWORD = "select first_password_since(:staff)";
    private static final String LOG = "select log_sign_in(:login, :succeeded, :at)";

    private final JdbcClient jdbc;

    JdbcSignInRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<StaffPrincipal> byLogin(String login) {
        return jdbc.sql(BY_LOGIN)
                .param("login", login)
                .query((row, number) -> new StaffPrincipal(
                        new StaffId(row.getObject("staff_id", UUID.class)),
                        login,
                        row.getString("name"),
                        row.getBoolean("must_change"),
                        toStep(row.getString("step")),
                        row.getString("hash")))
                .optional();
    }

    Optional<StaffPrincipal> byStaff(UUID staff) {
        return jdbc.sql(BY_STAFF)
                .param("staff", staff)
                .query((row, number) -> new StaffPrincipal(
                        new StaffId(staff),
                        row.getString("login"),
                        row.getString("name"),
                        row.getBoolean("must_change"),
                        toStep(row.getString("step")),
                        null))
                .optional();
    }

    Optional<StaffPrincipal> bySubject(String issuer, String subject) {
        return jdbc.sql(BY_SUBJECT)
                .param("issuer", issuer)
                .param("subject", subject)
                .query(UUID.class)
                .optional()
                .flatMap(this::byStaff);
    }

    /** The archive that holds the key, with what the key is for as authorities. */
    Optional<Authentication> byToken(byte[] secretHash) {
        return jdbc.sql(BY_TOKEN)
                .param("hash", secretHash)
                .query((row, number) -> toArchive(row))
                .optional();
    }

    private static Authentication toArchive(ResultSet row) throws SQLException {
        var name = row.getString("name");
        var archive =
                new StaffPrincipal(new StaffId(row.getObject("staff_id", UUID.class)), name, name, false, null, null);
        var scopes = Stream.of((String[]) row.getArray("scopes").getArray())
                .map(scope ->
                        new SimpleGrantedAuthority(TokenScope.valueOf(scope).authority()))
                .toList();
        return UsernamePasswordAuthenticationToken.authenticated(archive, null, scopes);
    }

    /** Counts an attempt; more than zero is how long to wait, and then nothing was counted. */
    Duration begin(String account, String source, Instant at) {
        double seconds = jdbc.sql(BEGIN)
                .param("account", account)
                .param("source", source)
                .param("at", Timestamp.from(at))
                .query(Double.class)
                .single();
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    void end(String account, String source) {
        jdbc.sql(END)
                .param("account", account)
                .param("source", source)
                .query((row, number) -> number)
                .single();
    }

    void beginSession(UUID id, UUID staff, String device, Instant at) {
        jdbc.sql(BEGIN_SESSION)
                .param("id", id)
                .param("staff", staff)
                .param("device", device)
                .param("at", Timestamp.from(at))
                .query((row, number) -> number)
                .single();
    }

    /** Whether the session still stands; notes what its person did. */
    boolean useSession(UUID id, boolean isDeed, Instant at) {
        return jdbc.sql(USE_SESSION)
                .param("id", id)
                .param("deed", isDeed)
                .param("at", Timestamp.from(at))
                .query(Boolean.class)
                .single();
    }

    void endSession(UUID id, Instant at) {
        jdbc.sql(END_SESSION)
                .param("id", id)
                .param("at", Timestamp.from(at))
                .query(Boolean.class)
                .single();
    }

    /** Since when the person has a password they did not choose; empty when they chose it. */
    Optional<Instant> firstPasswordSince(StaffId staff) {
        return jdbc.sql(FIRST_PASSWORD)
                .param("staff", staff.value())
                .query((row, number) -> Optional.ofNullable(row.getTimestamp(1)).map(Timestamp::toInstant))
                .single();
    }

    void log(String login, boolean succeeded, Instant at) {
        jdbc.sql(LOG)
                .param("login", login)
                .param("succeeded", succeeded)
                .param("at", Timestamp.from(at))
                .query((row, number) -> number)
                .single();
    }

    private static SecondStep.@Nullable Kind toStep(String step) {
        return step.equals("NONE") ? null : SecondStep.Kind.valueOf(step);
    }
}
