package org.espalier.followup;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Who is late or without a date, and what was tried. */
@Repository
class JdbcRecallRepository {

    record Row(Visit visit, int notBrought, List<Channel> tried, Optional<Attempt> last) {}

    private static final String ATTEMPT = """
            a.made_on, a.channel, a.outcome as attempt_outcome, a.consent_of, a.note, a.next_step, a.next_on
            """;
    private static final String ABOUT_THE_VISIT = """
            (select count(*) from visit p where p.child_id = v.child_id and p.outcome = 'NOT_BROUGHT'
                and p.closed_at > coalesce((select max(q.closed_at) from visit q
                    where q.child_id = v.child_id and q.outcome = 'ARRIVED'), '-infinity')) as not_brought,
            (select string_agg(t.channel, ',' order by t.recorded_at) from attempt t where t.visit_id = v.id) as tried
            """;
    private static final String LAST_ATTEMPT = """
            left join lateral (select * from attempt t where t.visit_id = v.id
                order by t.recorded_at desc, t.id desc limit 1) a on true
            """;
    private static final String LATE = "select " + VisitRows.COLUMNS + ", " + ATTEMPT + ", " + ABOUT_THE_VISIT + """
            from (
                select v.* from unnest(cast(:sites as uuid[]), cast(:todays as date[])) s (site, today)
                cross join lateral (
                    select * from visit o
                    where o.site_id = s.site and o.closed_at is null and o.recall_from <= s.today
                    order by o.harm desc, o.look_by limit :upTo) v
                order by v.harm desc, v.look_by, v.id offset :from limit :most
            ) v
            """
            + LAST_ATTEMPT + " order by v.harm desc, v.look_by, v.id";
    private static final String COUNT = """
            select count(*) from unnest(cast(:sites as uuid[]), cast(:todays as date[])) s (site, today)
                cross join lateral (select from visit o
                    where o.site_id = s.site and o.closed_at is null and o.recall_from <= s.today) v
            """;
    private static final String TO_REMIND = "select " + VisitRows.COLUMNS + """
            from visit v
            where v.site_id = :site and v.closed_at is null and v.appointment_on between :today and :today + 14
                and not exists (select from attempt t where t.visit_id = v.id and t.outcome = 'REMINDED'
                    and t.made_on >= v.appointment_on - case when v.appointment_on <= :today + 2 then 2 else 14 end)
            order by v.appointment_on, v.appointment_at, v.id limit :most
            """;
    private static final String ADD = """
            insert into attempt (id, site_id, recorded_site, child_id, visit_id, channel, outcome, consent_of, note,
                next_step, next_on, made_on, recorded_by, recorded_at)
            values (:id, :site, :site, :child, :visit, :channel, :outcome, :consentOf, :note,
                :nextStep, :nextOn, :on, :by, :at)
            """;
    private static final String OF_CHILD = "select " + ATTEMPT + """
            from attempt a where a.child_id = :child order by a.recorded_at desc, a.id desc
            """;

    private final JdbcClient jdbc;

    JdbcRecallRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The worst harm first; of equal harm the one due first. */
    List<Row> late(Map<SiteId, LocalDate> todays, int from, int most) {
        return at(jdbc.sql(LATE), todays)
                .param("from", from)
                .param("most", most)
                .param("upTo", from + most)
                .query(JdbcRecallRepository::toRow)
                .list();
    }

    long count(Map<SiteId, LocalDate> todays) {
        return at(jdbc.sql(COUNT), todays).query(Long.class).single();
    }

    List<Visit> toRemind(SiteId site, LocalDate today, int most) {
        return jdbc.sql(TO_REMIND)
                .param("site", site.value())
                .param("today", today)
                .param("most", most)
                .query(VisitRows::toVisit)
                .list();
    }

    void add(UUID id, Visit visit, Attempt attempt, @Nullable StaffId by, Instant at) {
        jdbc.sql(ADD)
                .param("id", id)
                .param("site", visit.site().value())
                .param("child", visit.child().value())
                .param("visit", visit.id().value())
                .param("channel", attempt.channel().name())
                .param("outcome", attempt.outcome().name())
                .param("consentOf", attempt.consentOf().orElse(null))
                .param("note", attempt.note().orElse(null))
                .param("nextStep", attempt.next().map(Attempt.Next::step).orElse(null))
                .param("nextOn", attempt.next().flatMap(Attempt.Next::on).orElse(null))
                .param("on", attempt.on())
                .param("by", by == null ? null : by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** The last first. */
    List<Attempt> of(ChildId child) {
        return jdbc.sql(OF_CHILD)
                .param("child", child.value())
                .query((row, number) -> toAttempt(row))
                .list();
    }

    private static JdbcClient.StatementSpec at(JdbcClient.StatementSpec statement, Map<SiteId, LocalDate> todays) {
        var sites = List.copyOf(todays.entrySet());
        return statement
                .param(
                        "sites",
                        sites.stream().map(site -> site.getKey().value()).toArray(UUID[]::new))
                .param(
                        "todays",
                        sites.stream().map(site -> site.getValue().toString()).toArray(String[]::new));
    }

    private static Row toRow(ResultSet row, int number) throws SQLException {
        var tried = row.getString("tried");
        return new Row(
                VisitRows.toVisit(row, number),
                row.getInt("not_brought"),
                tried == null
                        ? List.of()
                        : Arrays.stream(tried.split(",")).map(Channel::valueOf).toList(),
                row.getString("channel") == null ? Optional.empty() : Optional.of(toAttempt(row)));
    }

    private static Attempt toAttempt(ResultSet row) throws SQLException {
        var nextOn = VisitRows.day(row, "next_on");
        return new Attempt(
                row.getObject("made_on", LocalDate.class),
                Channel.valueOf(row.getString("channel")),
                AttemptOutcome.valueOf(row.getString("attempt_outcome")),
                Optional.ofNullable(row.getString("consent_of")),
                Optional.ofNullable(row.getString("note")),
                Optional.ofNullable(row.getString("next_step")).map(step -> new Attempt.Next(step, nextOn)));
    }
}
