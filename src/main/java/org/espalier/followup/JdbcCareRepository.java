package org.espalier.followup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Side;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What the rules need to know of a child, read where it is kept; no look at a record is written down for a rule. */
@Repository
class JdbcCareRepository {

    record CareRow(
            SiteId site,
            LocalDate birth,
            LocalDate since,
            Optional<LocalDate> lastSeen,
            boolean boneDisease,
            boolean tibiaVara) {}

    record Filmed(Side side, LocalDate on) {}

    private static final double QUARTERS = 4;

    private static final String CHILD = """
            select c.site_id, coalesce(i.birth_date, c.birth_month) as birth,
                cast(c.recorded_at at time zone s.time_zone as date) as since,
                (select max(v.outcome_on) from visit v where v.child_id = c.id and v.outcome = 'ARRIVED') as seen,
                exists (select from diagnosis d where d.child_id = c.id and not d.withdrawn
                    and d.kind in ('RICKETS_NUTRITIONAL', 'RICKETS_HYPOPHOSPHATAEMIC', 'RICKETS_OTHER',
                        'SKELETAL_DYSPLASIA', 'RENAL')
                    and not exists (select from diagnosis later where later.supersedes = d.id)) as bone_disease,
                exists (select from diagnosis d where d.child_id = c.id and not d.withdrawn
                    and d.kind = 'TIBIA_VARA' and d.onset in ('EARLY', 'INFANTILE')
                    and not exists (select from diagnosis later where later.supersedes = d.id)) as tibia_vara
            from child c join site s on s.id = c.site_id left join child_identity i on i.child_id = c.id
            where c.id = :child
            """;
    /** The 90th percentile of the wait, over the site's last two years; null with fewer than ten operations. */
    private static final String WAIT = """
            select case when count(*) >= 10
                then percentile_cont(0.9) within group (order by s.done_on - p.asked_on) / 30.4375 end as months
            from procedure_act a
                join procedure_session s on s.id = a.session_id and s.site_id = :site and not s.withdrawn
                join treatment_plan p on p.id = a.plan and p.asked_on is not null
            where a.site_id = :site and s.done_on > :since
                and not exists (select from procedure_session later where later.supersedes = s.id)
            """;

    private static final String LAST_FILMS = """
            select n.side, max(f.taken_on) as taken_on
            from reading r join film f on f.id = r.film_id and f.child_id = r.child_id
                join reading_number n on n.reading_id = r.id
            where r.child_id = :child and f.taken_on is not null
            group by n.side
            """;

    private final JdbcClient jdbc;

    JdbcCareRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    CareRow child(ChildId child) {
        return jdbc.sql(CHILD)
                .param("child", child.value())
                .query((row, number) -> new CareRow(
                        new SiteId(row.getObject("site_id", UUID.class)),
                        row.getObject("birth", LocalDate.class),
                        row.getObject("since", LocalDate.class),
                        VisitRows.day(row, "seen"),
                        row.getBoolean("bone_disease"),
                        row.getBoolean("tibia_vara")))
                .optional()
                .orElseThrow(() -> new IllegalArgumentException("no such child: " + child));
    }

    /**
     * From asking for theatre to theatre, 90th percentile, up to the next quarter of a month, so that not every
     * operation moves every date; empty while the site's records are too few to tell.
     */
    Optional<Double> waitMonths(SiteId site, LocalDate since) {
        return jdbc.sql(WAIT)
                .param("site", site.value())
                .param("since", since)
                .query((row, number) -> Optional.ofNullable((Double) row.getObject("months")))
                .single()
                .map(months -> Math.ceil(months * QUARTERS) / QUARTERS);
    }

    /** The last film of each limb that was read. */
    List<Filmed> lastFilms(ChildId child) {
        return jdbc.sql(LAST_FILMS)
                .param("child", child.value())
                .query((row, number) ->
                        new Filmed(Side.valueOf(row.getString("side")), row.getObject("taken_on", LocalDate.class)))
                .list();
    }
}
