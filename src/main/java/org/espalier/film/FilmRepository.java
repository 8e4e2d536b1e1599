package org.espalier.film;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.BlobRef;
import org.espalier.science.quantity.PixelScale;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class FilmRepository {

    private static final String COLUMNS = """
            film.id, film.site_id, film.child_id, film.version, film.state, film.kind, film.taken_on, film.view,
            film.width, film.height, film.scale_source, film.mm_per_px_x, film.mm_per_px_y,
            film.magnification, film.aside_reason, film.sha256, film.size_bytes, film.recorded_at""";

    private static final String FIND = "select " + COLUMNS + " from film where id = :id";

    private static final String LOCK = FIND + " for no key update";

    private static final String OF_CHILD = "select " + COLUMNS + """
             from film
            where child_id = :child and state <> 'KEPT_ASIDE'
            order by taken_on nulls last, recorded_at, id""";

    private static final String SAME_BYTES = "select " + COLUMNS + """
             from film
            where recorded_site = :site and sha256 = :sha""";

    private static final String BYTES_USED =
            "select coalesce(sum(size_bytes), 0) from film where recorded_site = :site";

    private static final String COUNT = """
            select child_id, count(*) as films from film
            where site_id = :site and child_id = any(:children) and state <> 'KEPT_ASIDE'
            group by child_id""";

    private static final String ADD = """
            insert into film (id, site_id, recorded_site, state, kind, sha256, size_bytes, transfer_syntax_uid,
                sop_class_uid, sop_instance_uid, study_uid, series_uid, modality, view, study_date, taken_on,
                scale_source, mm_per_px_x, mm_per_px_y, magnification, aside_reason, aside_detail, recorded_by,
                    recorded_at)
            values (:id, :site, :site, :state, :kind, :sha, :size, :syntax,
                :sopClass, :instance, :study, :series, :modality, :view, :studyDate, :takenOn,
                :source, :mmX, :mmY, :magnification, :reason, :detail, current_staff(), :at)
            on conflict do nothing""";

    private static final String ADD_LABEL = """
            insert into film_label (film_id, site_id, original_name, patient_name, local_number, birth_date, sex,
                accession_number, study_description, series_description)
            values (:film, :site, :originalName, :patientName, :localNumber, :birthDate, :sex,
                :accession, :study, :series)""";

    private static final String SET_READY = """
            update film set state = 'READY', width = :width, height = :height
            where id = :id and state = 'RECEIVED'""";

    private static final String SET_ASIDE = """
            update film set state = 'KEPT_ASIDE', aside_reason = :reason, aside_detail = :detail
            where id = :id and state = 'RECEIVED'""";

    private final JdbcClient jdbc;

    FilmRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Film> find(FilmId film) {
        return jdbc.sql(FIND)
                .param("id", film.value())
                .query(FilmRepository::film)
                .optional();
    }

    /** Finds the film and keeps others from changing it until the transaction ends. */
    Optional<Film> lock(FilmId film) {
        return jdbc.sql(LOCK)
                .param("id", film.value())
                .query(FilmRepository::film)
                .optional();
    }

    List<Film> of(ChildId child) {
        return jdbc.sql(OF_CHILD)
                .param("child", child.value())
                .query(FilmRepository::film)
                .list();
    }

    Optional<Film> withBytes(SiteId site, String sha256) {
        return jdbc.sql(SAME_BYTES)
                .param("site", site.value())
                .param("sha", sha256)
                .query(FilmRepository::film)
                .optional();
    }

    long bytesUsed(SiteId site) {
        return jdbc.sql(BYTES_USED)
                .param("site", site.value())
                .query(Long.class)
                .single();
    }

    /** How many films of each of the children are or will be shown; nothing for a child without any. */
    Map<ChildId, Long> countOf(SiteId site, Collection<ChildId> children) {
        return jdbc
                .sql(COUNT)
                .param("site", site.value())
                .param("children", children.stream().map(ChildId::value).toArray(UUID[]::new))
                .query((row, number) ->
                        Map.entry(new ChildId(row.getObject("child_id", UUID.class)), row.getLong("films")))
                .list()
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** Adds the film unless one with the same bytes or the same instance is there already; says whether it did. */
    boolean add(Arrival arrival) {
        var tags = arrival.tags();
        var scale = tags.scale();
        int added = jdbc.sql(ADD)
                .param("id", arrival.id().value())
                .param("site", arrival.site().value())
                .param("state", (arrival.aside().isPresent() ? FilmState.KEPT_ASIDE : FilmState.RECEIVED).name())
                .param("kind", arrival.kind().name())
                .param("sha", arrival.bytes().sha256())
                .param("size", arrival.bytes().size())
                .param("syntax", tags.transferSyntax())
                .param("sopClass", tags.sopClass())
                .param("instance", tags.sopInstance())
                .param("study", tags.study())
                .param("series", tags.series())
                .param("modality", tags.modality())
                .param("view", tags.view())
                .param("studyDate", tags.studyDate())
                .param("takenOn", tags.takenOn())
                .param("source", scale.source().name())
                .param("mmX", scale.size().map(PixelScale::millimetresPerPixelX).orElse(null))
                .param("mmY", scale.size().map(PixelScale::millimetresPerPixelY).orElse(null))
                .param("magnification", scale.magnification().orElse(null))
                .param(
                        "reason",
                        arrival.aside().map(aside -> aside.reason().name()).orElse(null))
                .param(
                        "detail",
                        arrival.aside().map(FilmInspector.Aside::detail).orElse(null))
                .param("at", Timestamp.from(arrival.at()))
                .update();
        if (added == 1) {
            addLabel(arrival);
        }
        return added == 1;
    }

    private void addLabel(Arrival arrival) {
        var label = arrival.tags().label();
        jdbc.sql(ADD_LABEL)
                .param("film", arrival.id().value())
                .param("site", arrival.site().value())
                .param("originalName", arrival.originalName())
                .param("patientName", label.patientName())
                .param("localNumber", label.localNumber())
                .param("birthDate", label.birthDate())
                .param("sex", label.sex())
                .param("accession", label.accessionNumber())
                .param("study", label.studyDescription())
                .param("series", label.seriesDescription())
                .update();
    }

    /** Says that the picture is prepared; false when it is no longer waited for. */
    boolean setReady(FilmId film, Film.Size size) {
        return jdbc.sql(SET_READY)
                        .param("id", film.value())
                        .param("width", size.width())
                        .param("height", size.height())
                        .update()
                == 1;
    }

    void setAside(FilmId film, FilmInspector.Aside aside) {
        jdbc.sql(SET_ASIDE)
                .param("id", film.value())
                .param("reason", aside.reason().name())
                .param("detail", aside.detail())
                .update();
    }

    static Film film(ResultSet row, int number) throws SQLException {
        return new Film(
                new FilmId(row.getObject("id", UUID.class)),
                new SiteId(row.getObject("site_id", UUID.class)),
                Optional.ofNullable(row.getObject("child_id", UUID.class)).map(ChildId::new),
                row.getLong("version"),
                FilmState.valueOf(row.getString("state")),
                FilmKind.valueOf(row.getString("kind")),
                Optional.ofNullable(row.getObject("taken_on", LocalDate.class)),
                Optional.ofNullable(row.getString("view")),
                size(row.getInt("width"), row.getInt("height")),
                scale(row),
                Optional.ofNullable(row.getString("aside_reason")).map(AsideReason::valueOf),
                new BlobRef(row.getString("sha256"), row.getLong("size_bytes")),
                row.getTimestamp("recorded_at").toInstant());
    }

    private static Optional<Film.Size> size(int width, int height) {
        return width == 0 ? Optional.empty() : Optional.of(new Film.Size(width, height));
    }

    private static FilmScale scale(ResultSet row) throws SQLException {
        double across = row.getDouble("mm_per_px_x");
        double down = row.getDouble("mm_per_px_y");
        return new FilmScale(
                ScaleSource.valueOf(row.getString("scale_source")),
                across > 0 ? Optional.of(PixelScale.of(across, down)) : Optional.empty(),
                Optional.ofNullable(row.getObject("magnification", Double.class)));
    }
}
