package org.espalier.opinion;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.platform.BlobRef;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** How cases end, and what came of them. */
@Repository
class JdbcClosingRepository {

    private static final String CLOSE = """
            insert into opinion_close (thread_id, decided, text, decided_by, pdf_sha256, pdf_bytes, closed_by,
                closed_at)
            values (:id, :decided, :text, :by, :sha, :bytes, current_staff(), :at) on conflict do nothing""";

    private static final String CLOSING =
            "select decided, text, decided_by, closed_at from opinion_close where thread_id = :id";
    private static final String PDF = "select pdf_sha256, pdf_bytes from opinion_close where thread_id = :id";

    private static final String ADD_OUTCOME = """
            insert into opinion_outcome (id, thread_id, horizon, done, result, text, months, recorded_by, recorded_at)
            values (:outcome, :id, :horizon, :done, :result, :text, :months, current_staff(), :at) on conflict do
                nothing""";

    private static final String OUTCOMES = """
            select horizon, done, result, text, months from opinion_outcome where thread_id = :id
            order by horizon desc""";

    private static final String FARED = "select * from my_advice_fared() order by given_at desc limit 200";

    private final JdbcClient jdbc;

    JdbcClosingRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    boolean close(ThreadId id, Closing closing, BlobRef pdf) {
        return jdbc.sql(CLOSE)
                        .param("id", id.value())
                        .param("decided", closing.decided().name())
                        .param("text", closing.text())
                        .param("by", closing.decidedBy())
                        .param("sha", pdf.sha256())
                        .param("bytes", pdf.size())
                        .param("at", Timestamp.from(closing.at()))
                        .update()
                == 1;
    }

    Optional<Closing> closing(ThreadId id) {
        return jdbc.sql(CLOSING)
                .param("id", id.value())
                .query((row, number) -> new Closing(
                        Advice.valueOf(row.getString("decided")),
                        row.getString("text"),
                        row.getString("decided_by"),
                        row.getTimestamp("closed_at").toInstant()))
                .optional();
    }

    Optional<BlobRef> pdf(ThreadId id) {
        return jdbc.sql(PDF)
                .param("id", id.value())
                .query((row, number) -> new BlobRef(row.getString("pdf_sha256"), row.getLong("pdf_bytes")))
                .optional();
    }

    boolean add(UUID outcome, ThreadId id, Outcome data, Instant at) {
        return jdbc.sql(ADD_OUTCOME)
                        .param("outcome", outcome)
                        .param("id", id.value())
                        .param("horizon", data.horizon().name())
                        .param("done", data.done().name())
                        .param("result", data.result().name())
                        .param("text", data.text())
                        .param("months", data.months())
                        .param("at", Timestamp.from(at))
                        .update()
                == 1;
    }

    List<Outcome> outcomes(ThreadId id) {
        return jdbc.sql(OUTCOMES)
                .param("id", id.value())
                .query((row, number) -> outcome(row, row.getString("text")))
                .list();
    }

    List<Fared> fared() {
        var byView = new LinkedHashMap<UUID, Fared>();
        jdbc.sql(FARED).query(row -> {
            var view = row.getObject("view_id", UUID.class);
            var fared = byView.getOrDefault(view, toFared(row));
            byView.put(view, row.getString("horizon") == null ? fared : fared.with(outcome(row, "")));
        });
        return List.copyOf(byView.values());
    }

    private static Fared toFared(ResultSet row) throws SQLException {
        return new Fared(
                new ThreadId(row.getObject("thread_id", UUID.class)),
                Advice.valueOf(row.getString("advice")),
                row.getString("place"),
                row.getString("due"),
                Sureness.valueOf(row.getString("sure")),
                row.getTimestamp("given_at").toInstant(),
                Advice.valueOf(row.getString("decided")),
                List.of());
    }

    private static Outcome outcome(ResultSet row, String text) throws SQLException {
        return new Outcome(
                Outcome.Horizon.valueOf(row.getString("horizon")),
                Advice.valueOf(row.getString("done")),
                Outcome.Result.valueOf(row.getString("result")),
                text,
                row.getInt("months"));
    }
}
