package org.espalier.platform;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Keeps what a person is in the middle of, for that person alone. Saved at every change, it survives a dropped
 * connection, an expired session and a restart; changes that arrive late or twice never replace newer ones.
 */
@Component
@Transactional
public class Drafts {

    private static final String START = """
            insert into draft (id, staff_id, kind, subject, revision, content, started_at, saved_at)
            values (:id, current_staff(), :kind, :subject, 1, cast(:content as jsonb), :now, :now)
            on conflict (staff_id, kind, subject) do nothing
            """;
    private static final String SAVE = """
            update draft set revision = :revision, content = cast(:content as jsonb), saved_at = :now
            where id = :id and staff_id = current_staff() and revision < :revision
            """;
    private static final String COLUMNS = """
            select id, kind, subject, revision, content, started_at, saved_at from draft
            where staff_id = current_staff()
            """;
    private static final String FIND = COLUMNS + "and kind = :kind and subject = :subject";
    private static final String BY_ID = COLUMNS + "and id = :id";
    private static final String MINE = COLUMNS + "and kind = :kind order by saved_at desc limit 200";
    private static final String DISCARD = "delete from draft where staff_id = current_staff() and id = :id";

    private final JdbcClient jdbc;
    private final Ids ids;
    private final Clock clock;

    Drafts(JdbcClient jdbc, Ids ids, Clock clock) {
        this.jdbc = jdbc;
        this.ids = ids;
        this.clock = clock;
    }

    /** Starts the caller's draft of the kind about the subject, as revision 1, or goes on with the one there is. */
    public Draft start(String kind, UUID subject, String json) {
        jdbc.sql(START)
                .param("id", ids.next())
                .param("kind", kind)
                .param("subject", subject)
                .param("content", json)
                .param("now", now())
                .update();
        return find(kind, subject).orElseThrow();
    }

    /**
     * Keeps a revision of the caller's draft.
     *
     * @return false when nothing was changed: the same or a newer revision is kept, or the draft is gone
     */
    public boolean save(UUID id, long revision, String json) {
        return jdbc.sql(SAVE)
                        .param("id", id)
                        .param("revision", revision)
                        .param("content", json)
                        .param("now", now())
                        .update()
                == 1;
    }

    /** The caller's own draft of the kind about the subject. */
    public Optional<Draft> find(String kind, UUID subject) {
        return jdbc.sql(FIND)
                .param("kind", kind)
                .param("subject", subject)
                .query(Drafts::draft)
                .optional();
    }

    /** The caller's own draft by its id. */
    public Optional<Draft> byId(UUID id) {
        return jdbc.sql(BY_ID).param("id", id).query(Drafts::draft).optional();
    }

    /** The caller's own drafts of the kind, the last touched first. */
    public List<Draft> mine(String kind) {
        return jdbc.sql(MINE).param("kind", kind).query(Drafts::draft).list();
    }

    /** Forgets the caller's draft; nothing happens when it is gone. */
    public void discard(UUID id) {
        jdbc.sql(DISCARD).param("id", id).update();
    }

    private OffsetDateTime now() {
        return clock.instant().atOffset(ZoneOffset.UTC);
    }

    private static Draft draft(ResultSet row, int number) throws SQLException {
        return new Draft(
                row.getObject("id", UUID.class),
                row.getString("kind"),
                row.getObject("subject", UUID.class),
                row.getLong("revision"),
                row.getString("content"),
                instant(row, "started_at"),
                instant(row, "saved_at"));
    }

    private static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}
