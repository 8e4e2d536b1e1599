package org.espalier.platform;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/**
 * Keeps what a person is in the middle of, for that person alone. Saved at every change, it survives a dropped
 * connection, an expired session and a restart; changes that arrive late or twice never replace newer ones.
 */
@Repository
@Transactional
public class Drafts {

    private static final String SAVE = """
            insert into draft (staff_id, kind, subject, revision, content, saved_at)
            values (current_staff(), :kind, :subject, :revision, cast(:content as jsonb), :savedAt)
            on conflict (staff_id, kind, subject) do update
            set revision = excluded.revision, content = excluded.content, saved_at = excluded.saved_at
            where draft.revision < excluded.revision
            """;
    private static final String FIND = """
            select kind, subject, revision, content, saved_at from draft
            where staff_id = current_staff() and kind = :kind and subject = :subject
            """;
    private static final String MINE = """
            select kind, subject, revision, content, saved_at from draft
            where staff_id = current_staff() and kind = :kind order by saved_at desc limit 200
            """;
    private static final String DISCARD = """
            delete from draft where staff_id = current_staff() and kind = :kind and subject = :subject
            """;

    private final JdbcClient jdbc;
    private final Clock clock;

    Drafts(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /**
     * Keeps a revision.
     *
     * @return false when the same or a newer revision is kept already; nothing is changed then
     */
    public boolean save(String kind, UUID subject, long revision, String json) {
        return jdbc.sql(SAVE)
                        .param("kind", kind)
                        .param("subject", subject)
                        .param("revision", revision)
                        .param("content", json)
                        .param("savedAt", OffsetDateTime.now(clock.withZone(ZoneOffset.UTC)))
                        .update()
                == 1;
    }

    /** The caller's own draft of the kind about the subject. */
    @Transactional(readOnly = true)
    public Optional<Draft> find(String kind, UUID subject) {
        return jdbc.sql(FIND)
                .param("kind", kind)
                .param("subject", subject)
                .query(Drafts::draft)
                .optional();
    }

    /** The caller's own drafts of the kind, the last touched first. */
    @Transactional(readOnly = true)
    public List<Draft> mine(String kind) {
        return jdbc.sql(MINE).param("kind", kind).query(Drafts::draft).list();
    }

    /** Forgets the caller's draft; nothing happens when there is none. */
    public void discard(String kind, UUID subject) {
        jdbc.sql(DISCARD).param("kind", kind).param("subject", subject).update();
    }

    private static Draft draft(ResultSet row, int number) throws SQLException {
        return new Draft(
                row.getString("kind"),
                row.getObject("subject", UUID.class),
                row.getLong("revision"),
                row.getString("content"),
                row.getObject("saved_at", OffsetDateTime.class).toInstant());
    }
}
