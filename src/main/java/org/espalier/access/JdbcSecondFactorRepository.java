package org.espalier.access;

import java.sql.Timestamp;
import java.time.Instant;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.ResultSetExtractor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Second factors, through the database's functions alone, and where they must be. */
@Repository
class JdbcSecondFactorRepository {

    private static final String MINE = "select secret, pending, last_step, codes_left from my_second_factor()";
    private static final String BEGIN = "select begin_second_factor(:secret, :at)";
    private static final String CONFIRM = "select confirm_second_factor(:step, :hashes, :at)";
    private static final String USE = "select use_second_factor(:step)";
    private static final String USE_RECOVERY = "select use_recovery_code(:hash, :at)";
    private static final String REMOVE = "select remove_second_factor(:staff)";
    private static final String DEMANDED = "select site_id, role from second_factor_rule where site_id is not null";
    private static final String DEMAND_NOT = "delete from second_factor_rule where site_id = :site";
    private static final String DEMAND = """
            insert into second_factor_rule (site_id, role) select :site, unnest(cast(:roles as text[]))""";
    private static final String OPERATORS = "select exists (select from second_factor_rule where role = 'OPERATOR')";
    private static final String OPERATORS_NOT = "delete from second_factor_rule where role = 'OPERATOR'";
    private static final String OPERATORS_TOO =
            "insert into second_factor_rule (role) values ('OPERATOR') on conflict do nothing";

    private final JdbcClient jdbc;

    JdbcSecondFactorRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * @param secret closed; null while none is confirmed
     * @param pending closed; null when nothing is being set up
     * @param lastStep steps up to this one are used up
     */
    @SuppressWarnings("ArrayRecordComponent")
    record Mine(byte @Nullable [] secret, byte @Nullable [] pending, long lastStep, long recoveryCodes) {

        @Override
        public String toString() {
            return "Mine";
        }
    }

    Optional<Mine> mine() {
        return jdbc.sql(MINE)
                .query((row, number) -> new Mine(
                        row.getBytes("secret"),
                        row.getBytes("pending"),
                        row.getLong("last_step"),
                        row.getLong("codes_left")))
                .optional();
    }

    void begin(byte[] closed, Instant at) {
        jdbc.sql(BEGIN)
                .param("secret", closed)
                .param("at", Timestamp.from(at))
                .query((row, number) -> number)
                .single();
    }

    void confirm(long step, List<byte[]> hashes, Instant at) {
        jdbc.sql(CONFIRM)
                .param("step", step)
                .param("hashes", hashes.toArray(byte[][]::new))
                .param("at", Timestamp.from(at))
                .query(Boolean.class)
                .single();
    }

    boolean use(long step) {
        return jdbc.sql(USE).param("step", step).query(Boolean.class).single();
    }

    boolean useRecovery(byte[] hash, Instant at) {
        return jdbc.sql(USE_RECOVERY)
                .param("hash", hash)
                .param("at", Timestamp.from(at))
                .query(Boolean.class)
                .single();
    }

    void remove(StaffId staff) {
        jdbc.sql(REMOVE)
                .param("staff", staff.value())
                .query((row, number) -> number)
                .single();
    }

    Map<SiteId, Set<Role>> demanded() {
        ResultSetExtractor<Map<SiteId, Set<Role>>> toRoles = rows -> {
            var roles = new HashMap<SiteId, Set<Role>>();
            while (rows.next()) {
                roles.computeIfAbsent(
                                new SiteId(rows.getObject("site_id", UUID.class)), site -> EnumSet.noneOf(Role.class))
                        .add(Role.valueOf(rows.getString("role")));
            }
            return roles;
        };
        return jdbc.sql(DEMANDED).query(toRoles);
    }

    void demandAt(SiteId site, List<Role> roles) {
        jdbc.sql(DEMAND_NOT).param("site", site.value()).update();
        jdbc.sql(DEMAND)
                .param("site", site.value())
                .param("roles", roles.stream().map(Role::name).toArray(String[]::new))
                .update();
    }

    boolean isDemandedOfOperators() {
        return jdbc.sql(OPERATORS).query(Boolean.class).single();
    }

    void demandOfOperators(boolean demanded) {
        jdbc.sql(demanded ? OPERATORS_TOO : OPERATORS_NOT).update();
    }
}
