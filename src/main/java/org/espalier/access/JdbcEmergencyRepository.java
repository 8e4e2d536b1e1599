package org.espalier.access;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Looks at children of other hospitals in an emergency, and what was found of them. */
@Repository
class JdbcEmergencyRepository {

    private static final String TAKE = """
            select outcome, child_id, wait_seconds, until
            from take_emergency_access(:id, :site, :number, :birth, :why, :at)""";
    private static final String COLUMNS = """
            select e.id, e.site_id, e.child_id, e.staff_id, s.name || coalesce(' (' || emergency_from(e.id) || ')', '')
                as who,
                e.reason, e.taken_at, upper(e.valid) as until, r.justified, r.note, b.name as reviewer, r.reviewed_at
            from emergency_access e join staff s on s.id = e.staff_id
            left join emergency_review r on r.emergency_id = e.id
            left join staff b on b.id = r.reviewed_by
            """;
    private static final String MINE = COLUMNS + """
            where e.staff_id = :staff and e.valid @> cast(:at as timestamptz) and e.child_id = any(my_emergencies())
            order by e.taken_at desc, e.id desc limit 50""";
    private static final String AT = COLUMNS + """
            where e.site_id = any(cast(:sites as uuid[])) and (r.id is null or e.taken_at > :since)
            order by e.taken_at desc, e.id desc limit 200""";
    private static final String REVIEW = """
            insert into emergency_review (id, emergency_id, site_id, justified, note, reviewed_by, reviewed_at)
            values (:id, :emergency, :site, :justified, :note, :by, :at)""";

    private final JdbcClient jdbc;

    JdbcEmergencyRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    EmergencyAnswer take(UUID id, SiteId site, String number, LocalDate birthDate, String why, Instant at) {
        return jdbc.sql(TAKE)
                .param("id", id)
                .param("site", site.value())
                .param("number", number)
                .param("birth", birthDate)
                .param("why", why)
                .param("at", Timestamp.from(at))
                .query(JdbcEmergencyRepository::toAnswer)
                .single();
    }

    List<EmergencyAccess> of(StaffId staff, Instant at) {
        return jdbc.sql(MINE)
                .param("staff", staff.value())
                .param("at", Timestamp.from(at))
                .query(JdbcEmergencyRepository::toAccess)
                .list();
    }

    List<EmergencyAccess> at(Collection<SiteId> sites, Instant since) {
        return jdbc.sql(AT)
                .param("sites", sites.stream().map(SiteId::value).toArray(UUID[]::new))
                .param("since", Timestamp.from(since))
                .query(JdbcEmergencyRepository::toAccess)
                .list();
    }

    void review(UUID id, EmergencyAccess emergency, boolean justified, String note, StaffId by, Instant at) {
        jdbc.sql(REVIEW)
                .param("id", id)
                .param("emergency", emergency.id())
                .param("site", emergency.site().value())
                .param("justified", justified)
                .param("note", note)
                .param("by", by.value())
                .param("at", Timestamp.from(at))
                .update();
    }

    private static EmergencyAnswer toAnswer(ResultSet row, int number) throws SQLException {
        return switch (row.getString("outcome")) {
            case "TAKEN" ->
                new EmergencyAnswer.Taken(
                        row.getObject("child_id", UUID.class),
                        row.getTimestamp("until").toInstant());
            case "WAIT" ->
                new EmergencyAnswer.Wait(Duration.ofSeconds((long) Math.ceil(row.getDouble("wait_seconds"))));
            default -> new EmergencyAnswer.NotFound();
        };
    }

    private static EmergencyAccess toAccess(ResultSet row, int number) throws SQLException {
        return new EmergencyAccess(
                row.getObject("id", UUID.class),
                new SiteId(row.getObject("site_id", UUID.class)),
                row.getObject("child_id", UUID.class),
                new StaffId(row.getObject("staff_id", UUID.class)),
                row.getString("who"),
                row.getString("reason"),
                row.getTimestamp("taken_at").toInstant(),
                row.getTimestamp("until").toInstant(),
                toReview(row));
    }

    private static EmergencyAccess.@Nullable Review toReview(ResultSet row) throws SQLException {
        boolean justified = row.getBoolean("justified");
        return row.wasNull()
                ? null
                : new EmergencyAccess.Review(
                        justified,
                        row.getString("note"),
                        row.getString("reviewer"),
                        row.getTimestamp("reviewed_at").toInstant());
    }
}
