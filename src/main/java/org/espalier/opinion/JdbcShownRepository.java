package org.espalier.opinion;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.film.ClipCopy;
import org.espalier.film.Film;
import org.espalier.film.FilmCopy;
import org.espalier.film.FilmScale;
import org.espalier.film.PictureKind;
import org.espalier.film.ScaleSource;
import org.espalier.platform.BlobRef;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.PixelScale;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** What is shown in threads: frozen facts and copies of films. */
@Repository
class JdbcShownRepository {

    private static final String ADD_FACT = """
            insert into opinion_shown (id, thread_id, kind, months, content, added_by, added_at)
            values (:id, :thread, :kind, :months, cast(:content as jsonb), current_staff(), :at)""";

    private static final String ADD_SOURCE =
            "insert into opinion_source (thread_id, source_id) values (:thread, :source) on conflict do nothing";

    private static final String SOURCES = "select source_id from opinion_source where thread_id = :thread";

    private static final String FACTS = """
            select id, kind, months, content, added_at from opinion_shown where thread_id = :thread
            order by added_at, id""";

    private static final String ADD_FILM = """
            insert into opinion_film (id, thread_id, months, title, kind, sha256, size_bytes, width, height,
                scale_source, mm_per_px_x, mm_per_px_y, magnification, covered, checked_by, added_at)
            values (:id, :thread, :months, :title, :kind, :sha, :size, :width, :height, :source,
                :mmX, :mmY, :magnification, :covered, current_staff(), :at)""";

    private static final String FILMS = """
            select id, months, title, kind, sha256, size_bytes, width, height, scale_source, mm_per_px_x,
                mm_per_px_y, magnification, covered, added_at from opinion_film where thread_id = :thread
            """;

    private static final String IN_ORDER = FILMS + "order by added_at, kind, months nulls last, id";
    private static final String ONE = FILMS + "and id = :film";

    private static final String ADD_CLIP = """
            insert into opinion_clip (id, thread_id, months, title, kind, sha256, size_bytes, length_ms, checked_by,
                added_at)
            values (:id, :thread, :months, :title, :kind, :sha, :size, :length, current_staff(), :at)""";

    private static final String CLIPS = """
            select id, months, title, kind, sha256, size_bytes, length_ms, added_at from opinion_clip
            where thread_id = :thread order by added_at, months nulls last, id""";

    private static final String ADD_PICTURE =
            "insert into opinion_picture (copy_id, thread_id, picture_id) values (:copy, :thread, :picture)";

    private static final String PHOTO = "PHOTO";

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final Ids ids;

    JdbcShownRepository(JdbcClient jdbc, JsonMapper json, Ids ids) {
        this.jdbc = jdbc;
        this.json = json;
        this.ids = ids;
    }

    void add(ThreadId thread, ShowableFact fact, Instant at) {
        jdbc.sql(ADD_FACT)
                .param("id", ids.next())
                .param("thread", thread.value())
                .param("kind", fact.kind().name())
                .param("months", fact.months())
                .param("content", json.writeValueAsString(fact.sheet()))
                .param("at", Timestamp.from(at))
                .update();
        addSource(thread, fact.source());
    }

    void add(ThreadId thread, ShowableFilm film, String title, FilmCopy copy, Instant at) {
        add(ids.next(), thread, film.months(), title, "FILM", copy, at);
        addSource(thread, film.film().id().value());
    }

    void addPhoto(ThreadId thread, ShowablePicture photo, String title, FilmCopy copy, Instant at) {
        var id = ids.next();
        add(id, thread, photo.months(), title, PHOTO, copy, at);
        addPicture(thread, id, photo);
    }

    void addClip(ThreadId thread, ShowablePicture clip, String title, ClipCopy copy, Instant at) {
        var id = ids.next();
        jdbc.sql(ADD_CLIP)
                .param("id", id)
                .param("thread", thread.value())
                .param("months", clip.months())
                .param("title", title)
                .param("kind", copy.kind().name())
                .param("sha", copy.bytes().sha256())
                .param("size", copy.bytes().size())
                .param("length", copy.length().toMillis())
                .param("at", Timestamp.from(at))
                .update();
        addPicture(thread, id, clip);
    }

    private void addPicture(ThreadId thread, UUID copy, ShowablePicture picture) {
        var source = picture.picture().id().value();
        jdbc.sql(ADD_PICTURE)
                .param("copy", copy)
                .param("thread", thread.value())
                .param("picture", source)
                .update();
        addSource(thread, source);
    }

    private void add(
            UUID id, ThreadId thread, @Nullable Integer months, String title, String kind, FilmCopy copy, Instant at) {
        var scale = copy.scale();
        jdbc.sql(ADD_FILM)
                .param("id", id)
                .param("thread", thread.value())
                .param("months", months)
                .param("title", title)
                .param("kind", kind)
                .param("sha", copy.bytes().sha256())
                .param("size", copy.bytes().size())
                .param("width", copy.size().width())
                .param("height", copy.size().height())
                .param("source", scale.source().name())
                .param("mmX", scale.size().map(PixelScale::millimetresPerPixelX).orElse(null))
                .param("mmY", scale.size().map(PixelScale::millimetresPerPixelY).orElse(null))
                .param("magnification", scale.magnification().orElse(null))
                .param("covered", copy.covered())
                .param("at", Timestamp.from(at))
                .update();
    }

    /** What is shown already, by what it was made from. */
    Set<UUID> sources(ThreadId thread) {
        return jdbc
                .sql(SOURCES)
                .param("thread", thread.value())
                .query((row, number) -> row.getObject(1, UUID.class))
                .list()
                .stream()
                .collect(Collectors.toSet());
    }

    /** Kind by kind, the earliest month first. */
    List<ShownFact> facts(ThreadId thread) {
        return jdbc
                .sql(FACTS)
                .param("thread", thread.value())
                .query((row, number) -> new ShownFact(
                        row.getObject("id", UUID.class),
                        FactKind.valueOf(row.getString("kind")),
                        row.getObject("months", Integer.class),
                        json.readValue(row.getString("content"), FactSheet.class),
                        row.getTimestamp("added_at").toInstant()))
                .stream()
                .sorted(ShownFact.IN_ORDER)
                .toList();
    }

    List<ShownFilm> films(ThreadId thread) {
        return jdbc.sql(IN_ORDER)
                .param("thread", thread.value())
                .query(JdbcShownRepository::film)
                .list();
    }

    Optional<ShownFilm> film(ThreadId thread, UUID film) {
        return jdbc.sql(ONE)
                .param("thread", thread.value())
                .param("film", film)
                .query(JdbcShownRepository::film)
                .optional();
    }

    List<ShownClip> clips(ThreadId thread) {
        return jdbc.sql(CLIPS)
                .param("thread", thread.value())
                .query((row, number) -> new ShownClip(
                        row.getObject("id", UUID.class),
                        row.getObject("months", Integer.class),
                        row.getString("title"),
                        new ClipCopy(
                                PictureKind.valueOf(row.getString("kind")),
                                new BlobRef(row.getString("sha256"), row.getLong("size_bytes")),
                                Duration.ofMillis(row.getLong("length_ms"))),
                        row.getTimestamp("added_at").toInstant()))
                .list();
    }

    private void addSource(ThreadId thread, UUID source) {
        jdbc.sql(ADD_SOURCE)
                .param("thread", thread.value())
                .param("source", source)
                .update();
    }

    private static ShownFilm film(ResultSet row, int number) throws SQLException {
        return new ShownFilm(
                row.getObject("id", UUID.class),
                row.getObject("months", Integer.class),
                row.getString("title"),
                row.getString("kind").equals(PHOTO),
                new FilmCopy(
                        new BlobRef(row.getString("sha256"), row.getLong("size_bytes")),
                        new Film.Size(row.getInt("width"), row.getInt("height")),
                        scale(row),
                        row.getInt("covered")),
                row.getTimestamp("added_at").toInstant());
    }

    private static FilmScale scale(ResultSet row) throws SQLException {
        double across = row.getDouble("mm_per_px_x");
        return new FilmScale(
                ScaleSource.valueOf(row.getString("scale_source")),
                across > 0 ? Optional.of(PixelScale.of(across, row.getDouble("mm_per_px_y"))) : Optional.empty(),
                Optional.ofNullable(row.getObject("magnification", Double.class)));
    }
}
