package org.espalier.film;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.film.FilmAssignment.Manner;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class FilmAssignmentRepository {

    private static final String ADD = """
            insert into film_assignment (id, site_id, recorded_site, film_id, child_id, taken_on, manner, supersedes,
                reason, recorded_by, recorded_at)
            values (:id, :site, :site, :film, :child, :takenOn, :manner, :supersedes, :reason, current_staff(), :at)""";

    private static final String GIVE = """
            update film set child_id = :child, taken_on = coalesce(:takenOn, taken_on), version = version + 1
            where id = :film""";

    private static final String OF_FILM = """
            select id, child_id, taken_on, manner, supersedes, reason, recorded_by, recorded_at
            from film_assignment where film_id = :film order by recorded_at, id""";

    private final JdbcClient jdbc;
    private final Ids ids;
    private final Clock clock;

    FilmAssignmentRepository(JdbcClient jdbc, Ids ids, Clock clock) {
        this.jdbc = jdbc;
        this.ids = ids;
        this.clock = clock;
    }

    void addFirst(Arrival arrival, ChildId child) {
        add(arrival.id(), arrival.site(), child, null, Manner.MATCHED, null, null);
    }

    /**
     * Adds the fact that follows the latest one, and lets the film stand by it.
     *
     * @param reason needed when there is a latest one
     */
    void addNext(Film film, @Nullable ChildId child, @Nullable LocalDate takenOn, @Nullable String reason) {
        var facts = of(film.id());
        if (facts.isEmpty()) {
            add(film.id(), film.site(), child, takenOn, Manner.BY_HAND, null, null);
            return;
        }
        if (reason == null || reason.isBlank()) {
            throw new IllegalArgumentException("moving a film needs a reason");
        }
        add(
                film.id(),
                film.site(),
                child,
                takenOn,
                Manner.BY_HAND,
                facts.getLast().id(),
                reason.strip());
    }

    private void add(
            FilmId film,
            SiteId site,
            @Nullable ChildId child,
            @Nullable LocalDate takenOn,
            Manner manner,
            @Nullable UUID supersedes,
            @Nullable String reason) {
        jdbc.sql(ADD)
                .param("id", ids.next())
                .param("site", site.value())
                .param("film", film.value())
                .param("child", child == null ? null : child.value())
                .param("takenOn", takenOn)
                .param("manner", manner.name())
                .param("supersedes", supersedes)
                .param("reason", reason)
                .param("at", Timestamp.from(clock.instant().truncatedTo(ChronoUnit.MICROS)))
                .update();
        jdbc.sql(GIVE)
                .param("film", film.value())
                .param("child", child == null ? null : child.value())
                .param("takenOn", takenOn)
                .update();
    }

    List<FilmAssignment> of(FilmId film) {
        return jdbc.sql(OF_FILM)
                .param("film", film.value())
                .query(FilmAssignmentRepository::assignment)
                .list();
    }

    private static FilmAssignment assignment(ResultSet row, int number) throws SQLException {
        Instant at = row.getTimestamp("recorded_at").toInstant();
        return new FilmAssignment(
                row.getObject("id", UUID.class),
                Optional.ofNullable(row.getObject("child_id", UUID.class)).map(ChildId::new),
                Optional.ofNullable(row.getObject("taken_on", LocalDate.class)),
                Manner.valueOf(row.getString("manner")),
                Optional.ofNullable(row.getObject("supersedes", UUID.class)),
                Optional.ofNullable(row.getString("reason")),
                Optional.ofNullable(row.getObject("recorded_by", UUID.class)).map(StaffId::new),
                at);
    }
}
