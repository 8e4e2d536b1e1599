package org.espalier.followup;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The limits sites signed, each set in place of the one before. */
@Repository
class JdbcLimitsRepository {

    private static final JsonMapper JSON = JsonMapper.builder()
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private static final String ADD = """
            insert into site_limits (id, site_id, content, reason, signed_by, signed_at)
            values (:id, :site, cast(:content as jsonb), :reason, :by, :at)
            """;
    private static final String ALL = """
            select l.content, l.reason, s.name, l.signed_at, cast(l.signed_at at time zone t.time_zone as date) as
                signed_on
            from site_limits l join site t on t.id = l.site_id left join staff s on s.id = l.signed_by
            where l.site_id = :site order by l.signed_at desc, l.id desc
            """;

    private final JdbcClient jdbc;

    JdbcLimitsRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(UUID id, SiteId site, Limits limits, String reason, @Nullable StaffId by, OffsetDateTime at) {
        jdbc.sql(ADD)
                .param("id", id)
                .param("site", site.value())
                .param("content", JSON.writeValueAsString(limits))
                .param("reason", reason)
                .param("by", by == null ? null : by.value())
                .param("at", at.withOffsetSameInstant(ZoneOffset.UTC))
                .update();
    }

    /** What holds at the site now. */
    Limits of(SiteId site) {
        return all(site).stream().findFirst().map(SignedLimits::limits).orElse(Limits.DEFAULTS);
    }

    /** The last signed first. */
    List<SignedLimits> all(SiteId site) {
        return jdbc.sql(ALL)
                .param("site", site.value())
                .query((row, number) -> new SignedLimits(
                        JSON.readValue(row.getString("content"), Limits.class),
                        row.getString("reason"),
                        row.getString("name"),
                        row.getObject("signed_on", LocalDate.class)))
                .list();
    }
}
