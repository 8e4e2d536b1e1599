package org.espalier.opinion;

import java.sql.Timestamp;
import java.time.Instant;
import java.time.LocalDate;
import org.espalier.access.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** How much a hospital's staff have to look at; counts alone. */
@Repository
class JdbcReminderRepository {

    /**
     * Counts of a hospital.
     *
     * @param wanted opinions its surgeons are asked for and have not given
     * @param due those of them that are due by the day asked about, or were
     * @param unread open questions with something new for somebody there
     * @param outcomes closed ones of which it is asked what came of them
     */
    record Counts(long wanted, long due, long unread, long outcomes) {

        boolean isNothing() {
            return wanted + unread + outcomes == 0;
        }
    }

    private static final String COUNTS =
            "select wanted, due, unread, outcomes from opinion_reminders(:site, :at, cast(:until as date))";

    private final JdbcClient jdbc;

    JdbcReminderRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Counts at(SiteId site, Instant at, LocalDate until) {
        return jdbc.sql(COUNTS)
                .param("site", site.value())
                .param("at", Timestamp.from(at))
                .param("until", until)
                .query((row, number) -> new Counts(
                        row.getLong("wanted"), row.getLong("due"), row.getLong("unread"), row.getLong("outcomes")))
                .single();
    }
}
