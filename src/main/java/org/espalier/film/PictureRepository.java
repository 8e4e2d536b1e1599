package org.espalier.film;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.BlobRef;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Photos and clips of children; the bytes lie in the film folder under their hash. */
@Repository
class PictureRepository {

    private static final String ADD = """
            insert into clinical_picture (id, site_id, recorded_site, child_id, kind, sha256, size_bytes, length_ms,
                taken_on, consent_by, consent_on, recorded_by, recorded_at)
            values (:id, :site, :site, :child, :kind, :sha, :size, :length, :takenOn, :consentBy, :consentOn,
                current_staff(), :at)""";

    private static final String WITHDRAW = """
            insert into clinical_picture_withdrawal (picture_id, site_id, recorded_site, child_id, reason, recorded_by,
                recorded_at)
            select id, site_id, site_id, child_id, :reason, current_staff(), :at from clinical_picture where id = :id
            on conflict do nothing""";

    private static final String COLUMNS = """
            select p.id, p.site_id, p.child_id, p.kind, p.sha256, p.size_bytes, p.length_ms, p.taken_on, p.consent_by,
                p.consent_on, p.recorded_at, s.name as by_name, w.reason as withdrawn
            from clinical_picture p
            left join staff s on s.id = p.recorded_by
            left join clinical_picture_withdrawal w on w.picture_id = p.id
            """;

    private static final String FIND = COLUMNS + "where p.id = :id";

    private static final String OF_CHILD =
            COLUMNS + "where p.child_id = :child order by p.taken_on desc, p.recorded_at desc, p.id";

    private static final String SAME_BYTES =
            COLUMNS + "where p.child_id = :child and p.sha256 = :sha and w.picture_id is null limit 1";

    private final JdbcClient jdbc;

    PictureRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(ClinicalPicture picture) {
        jdbc.sql(ADD)
                .param("id", picture.id().value())
                .param("site", picture.site().value())
                .param("child", picture.child().value())
                .param("kind", picture.kind().name())
                .param("sha", picture.bytes().sha256())
                .param("size", picture.bytes().size())
                .param("length", picture.length().map(Duration::toMillis).orElse(null))
                .param("takenOn", picture.takenOn())
                .param("consentBy", picture.consent().by().name())
                .param("consentOn", picture.consent().on())
                .param("at", Timestamp.from(picture.keptAt()))
                .update();
    }

    /** Whether it was withdrawn now; not when it was before, or is not to be seen. */
    boolean withdraw(PictureId picture, String reason, Instant at) {
        return jdbc.sql(WITHDRAW)
                        .param("id", picture.value())
                        .param("reason", reason)
                        .param("at", Timestamp.from(at))
                        .update()
                == 1;
    }

    Optional<ClinicalPicture> find(PictureId picture) {
        return jdbc.sql(FIND)
                .param("id", picture.value())
                .query(PictureRepository::picture)
                .optional();
    }

    /** The latest first, those withdrawn too. */
    List<ClinicalPicture> of(ChildId child) {
        return jdbc.sql(OF_CHILD)
                .param("child", child.value())
                .query(PictureRepository::picture)
                .list();
    }

    Optional<ClinicalPicture> withBytes(ChildId child, String sha256) {
        return jdbc.sql(SAME_BYTES)
                .param("child", child.value())
                .param("sha", sha256)
                .query(PictureRepository::picture)
                .optional();
    }

    private static ClinicalPicture picture(ResultSet row, int number) throws SQLException {
        return new ClinicalPicture(
                new PictureId(row.getObject("id", UUID.class)),
                new SiteId(row.getObject("site_id", UUID.class)),
                new ChildId(row.getObject("child_id", UUID.class)),
                PictureKind.valueOf(row.getString("kind")),
                new BlobRef(row.getString("sha256"), row.getLong("size_bytes")),
                Optional.ofNullable(row.getObject("length_ms", Integer.class)).map(Duration::ofMillis),
                row.getObject("taken_on", LocalDate.class),
                new Consent(
                        Consent.By.valueOf(row.getString("consent_by")), row.getObject("consent_on", LocalDate.class)),
                row.getString("by_name"),
                row.getTimestamp("recorded_at").toInstant(),
                Optional.ofNullable(row.getString("withdrawn")));
    }
}
