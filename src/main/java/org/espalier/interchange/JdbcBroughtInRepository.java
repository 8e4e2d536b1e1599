package org.espalier.interchange;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** When records were brought in, by whom, and how many. */
@Repository
class JdbcBroughtInRepository {

    private static final String ADD = """
            insert into records_brought_in (id, site_id, taken_by, taken_at, counts) values (:id, :site, :by, :at,
                :counts)
            """;
    private static final String OF_SITE = """
            select s.name, r.taken_at, r.counts from records_brought_in r left join staff s on s.id = r.taken_by
            where r.site_id = :site order by r.taken_at desc limit 20
            """;
    private static final String SITE = "select site_with_code(:code)";

    private final JdbcClient jdbc;

    JdbcBroughtInRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(UUID id, SiteId site, @Nullable StaffId by, Instant at, ImportReport report) {
        jdbc.sql(ADD)
                .param("id", id)
                .param("site", site.value())
                .param("by", by == null ? null : by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .param("counts", report.counts().stream().map(FileCount::asText).collect(Collectors.joining("; ")))
                .update();
    }

    List<BroughtIn> of(SiteId site) {
        return jdbc.sql(OF_SITE)
                .param("site", site.value())
                .query((row, number) -> new BroughtIn(
                        Optional.ofNullable(row.getString("name")),
                        row.getObject("taken_at", OffsetDateTime.class).toInstant(),
                        row.getString("counts")))
                .list();
    }

    /** The hospital with the code; no caller is needed. */
    Optional<SiteId> site(String code) {
        return jdbc.sql(SITE)
                .param("code", code)
                .query((row, number) -> Optional.ofNullable(row.getObject(1, UUID.class)))
                .single()
                .map(SiteId::new);
    }
}
