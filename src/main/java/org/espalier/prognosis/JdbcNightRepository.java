package org.espalier.prognosis;

import java.util.List;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which children's facts changed since their forecasts were made. */
@Repository
class JdbcNightRepository {

    /**
     * A child and the mark of its facts today.
     *
     * @param treated whether anything was ever done to it
     */
    record Marked(ChildId child, String mark, boolean changed, boolean treated) {}

    private static final String SITES = "select sites_of_the_night()";

    /** Whatever is written down anew changes a count, a newest id or a version. */
    private static final String NEXT = """
            with chunk as (
                select id, version, sex from child where site_id = :site and id > :after order by id limit :most)
            select c.id, m.mark as kept, t.treated, concat_ws('|', case when t.treated then :rates end, c.version,
                c.sex,
                (select concat(count(*), '-', max(r.signed_at)) from reading r
                    where r.site_id = :site and r.child_id = c.id),
                (select concat(count(*), '-', sum(f.version)) from film f where f.child_id = c.id),
                (select concat(count(*), '-', max(p.recorded_at)) from procedure_session p where p.child_id = c.id),
                (select concat(count(*), '-', max(g.recorded_at)) from treatment_target g where g.child_id = c.id),
                (select concat(count(*), '-', max(i.recorded_at)) from implant_finding i where i.child_id = c.id),
                (select concat(count(*), '-', max(y.recorded_at)) from physis_maturity y where y.child_id = c.id),
                (select concat(count(*), '-', max(b.recorded_at)) from bone_age b where b.child_id = c.id),
                (select concat(count(*), '-', max(s.recorded_at)) from body_size s where s.child_id = c.id),
                (select concat(count(*), '-', max(d.recorded_at)) from diagnosis d where d.child_id = c.id)) as mark
            from chunk c left join forecast_mark m on m.child_id = c.id
            cross join lateral (
                select exists (select from procedure_session s where s.child_id = c.id) as treated) t
            order by c.id
            """;

    private static final String MARK = """
            insert into forecast_mark (child_id, site_id, mark)
            select child, :site, mark from unnest(cast(:children as uuid[]), cast(:marks as text[])) as new (child,
                mark)
            on conflict (child_id) do update set mark = excluded.mark
            """;

    private final JdbcClient jdbc;

    JdbcNightRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Every site, for which no caller is needed. */
    List<SiteId> sites() {
        return jdbc.sql(SITES)
                .query((row, number) -> new SiteId(row.getObject(1, UUID.class)))
                .list();
    }

    /** The next children of a site by id, and whether anything a forecast rests on changed since it was made. */
    List<Marked> next(SiteId site, UUID after, int most, String rates) {
        return jdbc.sql(NEXT)
                .param("site", site.value())
                .param("after", after)
                .param("most", most)
                .param("rates", rates)
                .query((row, number) -> {
                    var mark = row.getString("mark");
                    return new Marked(
                            new ChildId(row.getObject("id", UUID.class)),
                            mark,
                            !mark.equals(row.getString("kept")),
                            row.getBoolean("treated"));
                })
                .list();
    }

    void mark(SiteId site, List<Marked> changed) {
        jdbc.sql(MARK)
                .param("site", site.value())
                .param(
                        "children",
                        changed.stream()
                                .map(one -> one.child().value().toString())
                                .toArray(String[]::new))
                .param("marks", changed.stream().map(Marked::mark).toArray(String[]::new))
                .update();
    }
}
