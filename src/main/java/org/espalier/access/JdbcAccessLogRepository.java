package org.espalier.access;

import java.sql.Timestamp;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalLong;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class JdbcAccessLogRepository {

    private static final String ADD = """
            insert into access_entry (id, at, staff_id, site_id, deed, subject, children, film_id, film_hour,
                about_staff)
            values (:id, :at, :staff, :site, :deed, :subject, :children, :film, :hour, :about)
            on conflict do nothing""";

    private static final String SITES_OF_CALLER = "select unnest(my_sites())";

    private final JdbcClient jdbc;

    JdbcAccessLogRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(AccessEntry entry) {
        var film = entry.film();
        var hour = film == null ? null : Timestamp.from(entry.at().truncatedTo(ChronoUnit.HOURS));
        jdbc.sql(ADD)
                .param("id", entry.id())
                .param("at", Timestamp.from(entry.at()))
                .param("staff", entry.staff() == null ? null : entry.staff().value())
                .param("site", entry.site() == null ? null : entry.site().value())
                .param("deed", entry.deed().name())
                .param("subject", entry.subject())
                .param("children", entry.children().toArray(UUID[]::new))
                .param("film", film)
                .param("hour", hour)
                .param("about", entry.about() == null ? null : entry.about().value())
                .update();
    }

    long seal(Instant at) {
        return jdbc.sql("select seal_access_log(:at)")
                .param("at", Timestamp.from(at))
                .query(Long.class)
                .single();
    }

    OptionalLong firstBrokenSeal() {
        return jdbc.sql("select broken_access_seal() as n")
                .query((row, number) -> {
                    long seal = row.getLong("n");
                    return row.wasNull() ? OptionalLong.empty() : OptionalLong.of(seal);
                })
                .single();
    }

    List<SiteId> sitesOfCaller() {
        return jdbc.sql(SITES_OF_CALLER).query(UUID.class).list().stream()
                .map(SiteId::new)
                .toList();
    }
}
