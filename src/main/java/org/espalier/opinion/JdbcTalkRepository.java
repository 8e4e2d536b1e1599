package org.espalier.opinion;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.StaffId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is said in threads, and what of it was read. */
@Repository
class JdbcTalkRepository {

    private static final String SAY = """
            insert into opinion_message (id, thread_id, film_id, author, kind, text, at)
            values (:id, :thread, cast(:film as uuid), current_staff(), :kind, :text, :at) on conflict (id) do
                nothing""";

    private static final String MESSAGES = """
            select m.id, m.kind, m.author, s.name, m.text, m.film_id, m.at
            from opinion_message m join staff s on s.id = m.author where m.thread_id = :thread order by m.at, m.id""";

    private static final String ADVISE = """
            insert into opinion_view (id, thread_id, author, advice, place, due, sure, change_mind, text, supersedes,
                at)
            values (:id, :thread, current_staff(), :advice, :place, :due, :sure, :change, :text, (
                select v.id from opinion_view v where v.thread_id = :thread and v.author = current_staff()
                    and not exists (select from opinion_view l where l.supersedes = v.id)), :at)
            on conflict (id) do nothing""";

    private static final String OPINIONS = """
            select v.id, v.author, s.name, v.advice, v.place, v.due, v.sure, v.change_mind, v.text, v.supersedes, v.at,
                exists (select from opinion_view l where l.supersedes = v.id) as superseded
            from opinion_view v join staff s on s.id = v.author where v.thread_id = :thread order by v.at, v.id""";

    private static final String SEEN = """
            insert into opinion_seen (thread_id, staff_id, seen_at) values (:thread, current_staff(), :at)
            on conflict (thread_id, staff_id) do update set seen_at = excluded.seen_at""";

    /** Membership first: full text is no leakproof operator, so no index of words passes a wall. */
    private static final String SEARCH = """
            with mine (id) as materialized (select unnest(my_threads())),
                wanted (words) as (select websearch_to_tsquery('simple', :typed))
            select thread_id, name, text, at from (
                select t.id as thread_id, s.name, t.question as text, t.asked_at as at
                from mine join opinion_thread t on t.id = mine.id join staff s on s.id = t.asker, wanted
                where t.words @@ wanted.words
                union all
                select m.thread_id, s.name, m.text, m.at
                from mine join opinion_message m on m.thread_id = mine.id join staff s on s.id = m.author, wanted
                where m.words @@ wanted.words
                union all
                select v.thread_id, s.name, concat_ws(' · ', v.text, nullif(v.place, ''), nullif(v.change_mind, '')),
                    v.at
                from mine join opinion_view v on v.thread_id = mine.id join staff s on s.id = v.author, wanted
                where v.words @@ wanted.words) found
            order by at desc limit 50""";

    private static final String OWN_WORDS = """
            select thread_id, name, text, at from (
                select m.thread_id, s.name, m.text, m.at from opinion_message m join staff s on s.id = m.author
                where m.author = current_staff() and m.kind = 'TEXT' and not m.thread_id = any((select
                    my_threads())::uuid[])
                union all
                select v.thread_id, s.name, concat_ws(' · ', v.text, nullif(v.place, ''), nullif(v.due, ''),
                    nullif(v.change_mind, '')), v.at
                from opinion_view v join staff s on s.id = v.author
                where v.author = current_staff() and not v.thread_id = any((select my_threads())::uuid[])) mine
            order by at desc limit 200""";

    private final JdbcClient jdbc;

    JdbcTalkRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    boolean say(UUID id, ThreadId thread, Message.Kind kind, String text, Optional<UUID> film, Instant at) {
        return jdbc.sql(SAY)
                        .param("id", id)
                        .param("thread", thread.value())
                        .param("film", film.orElse(null))
                        .param("kind", kind.name())
                        .param("text", text)
                        .param("at", Timestamp.from(at))
                        .update()
                == 1;
    }

    /** What was said and happened, the first first; of a thread that ended for the caller, their own words. */
    List<Message> messages(ThreadId thread) {
        return jdbc.sql(MESSAGES)
                .param("thread", thread.value())
                .query(JdbcTalkRepository::message)
                .list();
    }

    boolean advise(UUID id, ThreadId thread, OpinionData data, Instant at) {
        return jdbc.sql(ADVISE)
                        .param("id", id)
                        .param("thread", thread.value())
                        .param("advice", data.advice().name())
                        .param("place", data.place())
                        .param("due", data.due())
                        .param("sure", data.sure().name())
                        .param("change", data.changeMind())
                        .param("text", data.text())
                        .param("at", Timestamp.from(at))
                        .update()
                == 1;
    }

    /** Every opinion, those superseded too, the first first. */
    List<Opinion> opinions(ThreadId thread) {
        return jdbc.sql(OPINIONS)
                .param("thread", thread.value())
                .query(JdbcTalkRepository::opinion)
                .list();
    }

    void seen(ThreadId thread, Instant at) {
        jdbc.sql(SEEN)
                .param("thread", thread.value())
                .param("at", Timestamp.from(at))
                .update();
    }

    List<Found> search(String typed) {
        return jdbc.sql(SEARCH)
                .param("typed", typed)
                .query(JdbcTalkRepository::found)
                .list();
    }

    /** What the caller said in threads that ended for them. */
    List<Found> ownWords() {
        return jdbc.sql(OWN_WORDS).query(JdbcTalkRepository::found).list();
    }

    private static Found found(ResultSet row, int number) throws SQLException {
        return new Found(
                new ThreadId(row.getObject("thread_id", UUID.class)),
                row.getString("name"),
                row.getString("text"),
                row.getTimestamp("at").toInstant());
    }

    private static Message message(ResultSet row, int number) throws SQLException {
        return new Message(
                row.getObject("id", UUID.class),
                Message.Kind.valueOf(row.getString("kind")),
                new StaffId(row.getObject("author", UUID.class)),
                row.getString("name"),
                row.getString("text"),
                Optional.ofNullable(row.getObject("film_id", UUID.class)),
                row.getTimestamp("at").toInstant());
    }

    private static Opinion opinion(ResultSet row, int number) throws SQLException {
        return new Opinion(
                row.getObject("id", UUID.class),
                new StaffId(row.getObject("author", UUID.class)),
                row.getString("name"),
                new OpinionData(
                        Advice.valueOf(row.getString("advice")),
                        row.getString("place"),
                        row.getString("due"),
                        Sureness.valueOf(row.getString("sure")),
                        row.getString("change_mind"),
                        row.getString("text")),
                Optional.ofNullable(row.getObject("supersedes", UUID.class)),
                row.getBoolean("superseded"),
                row.getTimestamp("at").toInstant());
    }
}
