package org.espalier.today;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What waits in the care of children, as ids and days; names come from where they are kept. */
@Repository
class JdbcCareTodayRepository {

    /** What a row near its target is about when the next look has no date. */
    static final String NO_DATE = "NO_DATE";

    record Row(ChildId child, LocalDate day, String about, long all) {}

    /** A plan that stands and is not done. */
    private static final String WAITING_PLANS = """
            select p.child_id, p.theatre_on from treatment_plan p
            where p.site_id = :site and not p.withdrawn
                and not exists (select from treatment_plan later where later.supersedes = p.id)
                and not exists (select from procedure_act a where a.plan = p.id
                    and not exists (select from procedure_session s where s.supersedes = a.session_id))
            """;

    private static final String LATE = """
            select child_id, look_by as day, harm_reason as about, count(*) over () as all_of_them
            from visit where site_id = :site and closed_at is null and recall_from <= :day
            order by harm desc, look_by, id limit :most
            """;
    private static final String NEAR_TARGET = """
            with waiting as (%s)
            select v.child_id, v.list_by as day, case when v.appointment_on is null then '%s' else '' end as about,
                count(*) over () as all_of_them
            from visit v
            where v.site_id = :site and v.closed_at is null and v.list_by <= :day
                and not exists (select from waiting w where w.child_id = v.child_id)
            order by v.list_by, v.id limit :most
            """.formatted(WAITING_PLANS, NO_DATE);
    private static final String NOT_TAKEN = """
            select o.child_id, o.for_day as day, o.protocol as about, count(*) over () as all_of_them
            from film_order o
            where o.site_id = :site and o.needed and o.for_day %s :day
                and not exists (select from film_order_step s
                    where s.order_id = o.id and s.kind <> 'EXPOSURE_REJECTED')
            order by o.for_day, o.id limit :most
            """;
    private static final String TO_REMIND = """
            select count(*) from visit v
            where v.site_id = :site and v.closed_at is null and v.appointment_on between :day and :day + 14
                and not exists (select from attempt t where t.visit_id = v.id and t.outcome = 'REMINDED'
                    and t.made_on >= v.appointment_on - case when v.appointment_on <= :day + 2 then 2 else 14 end)
            """;
    private static final String PLATES = """
            select s.child_id, max(s.done_on) as day, '' as about, count(*) over () as all_of_them
            from procedure_session s
            where s.site_id = :site and s.done_on >= :day and not s.withdrawn and not s.elsewhere
                and not exists (select from procedure_session later where later.supersedes = s.id)
                and exists (select from procedure_act a where a.session_id = s.id and a.kind = 'PLATE_PLACED')
            group by s.child_id order by day desc, s.child_id limit :most
            """;
    private static final String THEATRE = """
            with waiting as (%s)
            select theatre_on as day, count(distinct child_id) as children from waiting
            where theatre_on between :day and :until group by theatre_on order by theatre_on
            """.formatted(WAITING_PLANS);
    private static final String LAST_CLINIC = """
            select max(outcome_on) from visit where site_id = :site and outcome = 'ARRIVED' and outcome_on < :day
            """;

    private final JdbcClient jdbc;

    JdbcCareTodayRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Row> late(SiteId site, LocalDate today, int most) {
        return rows(LATE, site, today, most);
    }

    List<Row> nearTarget(SiteId site, LocalDate until, int most) {
        return rows(NEAR_TARGET, site, until, most);
    }

    List<Row> filmsNotTaken(SiteId site, LocalDate today, int most) {
        return rows(NOT_TAKEN.formatted("<"), site, today, most);
    }

    List<Row> filmsOf(SiteId site, LocalDate day, int most) {
        return rows(NOT_TAKEN.formatted("="), site, day, most);
    }

    List<Row> platesSince(SiteId site, LocalDate day, int most) {
        return rows(PLATES, site, day, most);
    }

    List<TheatreDay> theatre(SiteId site, LocalDate from, LocalDate until) {
        return jdbc.sql(THEATRE)
                .param("site", site.value())
                .param("day", from)
                .param("until", until)
                .query((row, number) -> new TheatreDay(row.getObject("day", LocalDate.class), row.getInt("children")))
                .list();
    }

    Optional<LocalDate> lastClinic(SiteId site, LocalDate today) {
        return jdbc.sql(LAST_CLINIC)
                .param("site", site.value())
                .param("day", today)
                .query((row, number) -> Optional.ofNullable(row.getObject(1, LocalDate.class)))
                .single();
    }

    /** Families to be reminded of a date of the next two weeks, as the recall lists them. */
    long toRemind(SiteId site, LocalDate today) {
        return jdbc.sql(TO_REMIND)
                .param("site", site.value())
                .param("day", today)
                .query(Long.class)
                .single();
    }

    private List<Row> rows(String sql, SiteId site, LocalDate day, int most) {
        return jdbc.sql(sql)
                .param("site", site.value())
                .param("day", day)
                .param("most", most)
                .query((row, number) -> new Row(
                        new ChildId(row.getObject("child_id", UUID.class)),
                        row.getObject("day", LocalDate.class),
                        row.getString("about"),
                        row.getLong("all_of_them")))
                .list();
    }
}
