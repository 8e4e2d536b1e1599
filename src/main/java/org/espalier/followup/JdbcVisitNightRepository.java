package org.espalier.followup;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The open visits that a night's work on the recall goes through. */
@Repository
class JdbcVisitNightRepository {

    record Waiting(UUID visit, ChildId child) {}

    private static final String SITES = "select sites_with_visits()";
    private static final String NEXT = """
            select id, child_id from visit
            where site_id = :site and closed_at is null and id > :after
                and (recall_from <= :night or rules_mark is distinct from :mark)
            order by id limit :most
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

    /** The next open visits of the recall, and those whose dates rest on other rules than the mark's, by id. */
    List<Waiting> next(SiteId site, LocalDate night, String mark, UUID after, int most) {
        return jdbc.sql(NEXT)
                .param("site", site.value())
                .param("night", night)
                .param("mark", mark)
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
