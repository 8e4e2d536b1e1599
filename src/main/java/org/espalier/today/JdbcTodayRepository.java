package org.espalier.today;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.film.FilmId;
import org.espalier.patient.ChildId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What waits, as ids and days; names come from where they are kept. */
@Repository
class JdbcTodayRepository {

    record FilmRow(FilmId film, ChildId child, Optional<LocalDate> takenOn, long all) {}

    record ChildRow(ChildId child, Optional<LocalDate> lastFilm, long all) {}

    record DraftRow(
            OpenDraft.Kind kind, UUID subject, @Nullable ChildId child, String typedName, Instant savedAt) {}

    private static final String TO_READ = """
            select f.id, f.child_id, f.taken_on, count(*) over () as all_of_them
            from film f
            where f.site_id = :site and f.child_id is not null and f.state = 'READY' and f.kind = 'DICOM'
                and not exists (select from reading r where r.film_id = f.id)
            order by coalesce(f.taken_on, f.recorded_at::date), f.recorded_at
            limit :most
            """;
    private static final String TRAY = """
            select count(*) filter (where state <> 'KEPT_ASIDE') as unmatched,
                count(*) filter (where state = 'KEPT_ASIDE') as aside
            from film where site_id = :site and child_id is null
            """;
    private static final String WITHOUT_FILM = """
            select c.id, last.taken_on, count(*) over () as all_of_them
            from child c
                left join lateral (select max(f.taken_on) as taken_on from film f
                    where f.child_id = c.id and f.site_id = :site) last on true
            where c.site_id = :site and c.birth_month > :grownUp
                and (last.taken_on < :filmedBefore or last.taken_on is null and c.recorded_at < :registeredBefore)
            order by last.taken_on nulls first, c.recorded_at
            limit :most
            """;
    /** Drafts of other kinds are shown where they were begun. */
    private static final List<String> KINDS = Stream.of(OpenDraft.Kind.values())
            .map(kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .toList();

    private static final String DRAFTS = """
            select d.kind, d.subject, coalesce(f.child_id, c.id, v.child_id) as child_id, d.saved_at,
                concat_ws(' ', d.content ->> 'familyName', d.content ->> 'givenName') as typed_name
            from draft d
                left join film f on f.id = d.subject and f.site_id = :site
                left join child c on c.id = d.subject and c.site_id = :site
                left join visit v on v.id = d.subject and v.site_id = :site and v.closed_at is null
            where d.staff_id = current_staff() and d.kind in (:kinds)
                and (coalesce(f.child_id, c.id, v.child_id) is not null
                    or d.kind = 'child-new' and d.content ->> 'site' = cast(:site as text))
            order by d.saved_at desc
            limit :most
            """;

    private final JdbcClient jdbc;

    JdbcTodayRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<FilmRow> toRead(SiteId site, int most) {
        return jdbc.sql(TO_READ)
                .param("site", site.value())
                .param("most", most)
                .query((row, number) -> new FilmRow(
                        new FilmId(row.getObject("id", UUID.class)),
                        new ChildId(row.getObject("child_id", UUID.class)),
                        day(row),
                        row.getLong("all_of_them")))
                .list();
    }

    Tray tray(SiteId site) {
        return jdbc.sql(TRAY)
                .param("site", site.value())
                .query((row, number) -> new Tray(row.getLong("unmatched"), row.getLong("aside")))
                .single();
    }

    List<ChildRow> withoutFilm(
            SiteId site, LocalDate filmedBefore, Instant registeredBefore, LocalDate grownUp, int most) {
        return jdbc.sql(WITHOUT_FILM)
                .param("site", site.value())
                .param("filmedBefore", filmedBefore)
                .param("registeredBefore", registeredBefore.atOffset(ZoneOffset.UTC))
                .param("grownUp", grownUp)
                .param("most", most)
                .query((row, number) -> new ChildRow(
                        new ChildId(row.getObject("id", UUID.class)), day(row), row.getLong("all_of_them")))
                .list();
    }

    List<DraftRow> drafts(SiteId site, int most) {
        return jdbc.sql(DRAFTS)
                .param("site", site.value())
                .param("kinds", KINDS)
                .param("most", most)
                .query(JdbcTodayRepository::draft)
                .list();
    }

    private static DraftRow draft(ResultSet row, int number) throws SQLException {
        var child = row.getObject("child_id", UUID.class);
        var kind = row.getString("kind").toUpperCase(Locale.ROOT).replace('-', '_');
        return new DraftRow(
                OpenDraft.Kind.valueOf(kind),
                row.getObject("subject", UUID.class),
                child == null ? null : new ChildId(child),
                row.getString("typed_name"),
                row.getObject("saved_at", OffsetDateTime.class).toInstant());
    }

    private static Optional<LocalDate> day(ResultSet row) throws SQLException {
        return Optional.ofNullable(row.getObject("taken_on", LocalDate.class));
    }
}
