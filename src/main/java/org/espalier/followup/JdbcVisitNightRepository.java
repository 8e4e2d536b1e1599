package org.espalier.followup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** How far a night's work on the recall has come. */
@Repository
class JdbcVisitNightRepository {

    record Waiting(UUID visit, ChildId child) {}

    /**
     * How far a site has come.
     *
     * @param after the last visit that was looked at
     */
    record Night(LocalDate night, UUID after, int renewed, boolean finished) {}

    private static final String SITES = "select sites_with_visits()";
    private static final String FIND =
            "select night, after_visit, renewed, finished from visit_night where site_id = :site";
    private static final String SAVE = """
            insert into visit_night (site_id, night, after_visit, renewed, finished)
            values (:site, :night, :after, :renewed, :finished)
            on conflict (site_id) do update set night = excluded.night, after_visit = excluded.after_visit,
                renewed = excluded.renewed, finished = excluded.finished
            """;
    private static final String NEXT = """
            select id, child_id from visit
            where site_id = :site and closed_at is null and recall_from <= :night and id > :after order by id limit :most
            """;

    private static final String ALL = """
            select id, child_id from visit
            where site_id = :site and closed_at is null and id > :after order by id limit :most
            """;

    private final JdbcClient jdbc;

    JdbcVisitNightRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Every site; no caller is needed. */
    List<SiteId> sites() {
        return jdbc.sql(SITES)
                .query((row, number) -> new SiteId(row.getObject(1, UUID.class)))
                .list();
    }

    Optional<Night> find(SiteId site) {
        return jdbc.sql(FIND)
                .param("site", site.value())
                .query((row, number) -> new Night(
                        row.getObject("night", LocalDate.class),
                        row.getObject("after_visit", UUID.class),
                        row.getInt("renewed"),
                        row.getBoolean("finished")))
                .optional();
    }

    void save(SiteId site, Night night) {
        jdbc.sql(SAVE)
                .param("site", site.value())
                .param("night", night.night())
                .param("after", night.after())
                .param("renewed", night.renewed())
                .param("finished", night.finished())
                .update();
    }

    /** The next open visits of the recall, by id. */
    List<Waiting> next(SiteId site, LocalDate night, UUID after, int most) {
        return jdbc.sql(NEXT)
                .param("site", site.value())
                .param("night", night)
                .param("after", after)
                .param("most", most)
                .query((row, number) -> new Waiting(
                        row.getObject("id", UUID.class), new ChildId(row.getObject("child_id", UUID.class))))
                .list();
    }

    /** The next open visits, whether they are in the recall or not, by id. */
    List<Waiting> all(SiteId site, UUID after, int most) {
        return jdbc.sql(ALL)
                .param("site", site.value())
                .param("after", after)
                .param("most", most)
                .query((row, number) -> new Waiting(
                        row.getObject("id", UUID.class), new ChildId(row.getObject("child_id", UUID.class))))
                .list();
    }
}
