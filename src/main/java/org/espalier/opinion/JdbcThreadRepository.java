package org.espalier.opinion;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Cases. */
@Repository
class JdbcThreadRepository {

    private static final String ADD = """
            insert into opinion_thread (id, site_id, asker, question, wanted, place, due_by, has_frame, has_mri,
                theatre_wait_weeks, everybody, consent, asked_at, open_until)
            values (:id, :site, current_staff(), :question, :wanted, :place, :dueBy, :frame, :mri,
                :wait, :everybody, :consent, :at, :until)""";

    private static final String ADD_CASE =
            "insert into opinion_case (thread_id, site_id, child_id) values (:id, :site, :child)";

    private static final String FIND = """
            select t.id, t.site_id, h.name as site_name, t.asker, s.name as asker_name, t.question, t.wanted, t.place,
                t.due_by, t.has_frame, t.has_mri, t.theatre_wait_weeks, t.everybody, t.consent, t.asked_at,
                    t.open_until,
                c.child_id, t.id = any(my_writing_threads()) as writes, t.id = any(my_asked_threads('SURGEON')) as leads
            from opinion_thread t join site h on h.id = t.site_id join staff s on s.id = t.asker
            left join opinion_case c on c.thread_id = t.id
            where t.id = :id""";

    private static final String LINES = """
            with mine (id) as materialized (select unnest(my_threads()))
            select t.id, t.question, t.wanted, s.name as asker_name, h.name as site_name, t.asked_at, t.due_by,
                c.child_id is not null as mine, x.thread_id is not null as closed,
                (select count(*) from opinion_message m where m.thread_id = t.id and m.author <> current_staff()
                    and m.at > coalesce(seen.seen_at, '-infinity'))
                    + (select count(*) from opinion_view v where v.thread_id = t.id and v.author <> current_staff()
                    and v.at > coalesce(seen.seen_at, '-infinity')) as unread,
                (select count(distinct v.author) from opinion_view v where v.thread_id = t.id) as opinions,
                exists (select from opinion_view v where v.thread_id = t.id and v.author = current_staff()) as answered,
                exists (select from opinion_message r where r.thread_id = t.id and r.kind = 'REMINDER' and not exists (
                    select from opinion_message w
                    where w.thread_id = t.id and w.author = current_staff() and w.at > r.at)) as reminded,
                opinion_outcome_due(t.id, cast(:now as timestamptz)) as outcome_due
            from mine join opinion_thread t on t.id = mine.id
            join site h on h.id = t.site_id join staff s on s.id = t.asker
            left join opinion_case c on c.thread_id = t.id left join opinion_close x on x.thread_id = t.id
            left join opinion_seen seen on seen.thread_id = t.id and seen.staff_id = current_staff()
            where cast(:child as uuid) is null or c.child_id = cast(:child as uuid)
            order by x.thread_id is not null, t.due_by, t.asked_at desc limit 200""";

    private static final String CALLS = "select * from open_opinion_calls() order by due_by, asked_at limit 100";
    private static final String TAKE = "select take_opinion_call(:id, :at)";
    private static final String LOOK = "select look_at_opinion(:entry, :id, cast(:film as uuid), :at)";

    private static final String VERSION = """
            select concat_ws(' ',
                (select count(*) from opinion_message where thread_id = t.id),
                (select count(*) from opinion_view where thread_id = t.id),
                (select count(*) from opinion_mark where thread_id = t.id),
                (select count(*) from opinion_reading where thread_id = t.id),
                (select count(*) from opinion_shown where thread_id = t.id),
                (select count(*) from opinion_film where thread_id = t.id),
                (select count(*) from opinion_clip where thread_id = t.id),
                (select sum(extract(epoch from ends_at)) from opinion_member where thread_id = t.id),
                (select count(*) || '/' || count(agreed_at) from opinion_hand_over where thread_id = t.id),
                (select count(*) from opinion_close where thread_id = t.id),
                (select count(*) from opinion_outcome where thread_id = t.id))
            from opinion_thread t where t.id = :id""";

    private static final String NEWER = "select kind, many from newer_opinion_facts(:id)";

    private final JdbcClient jdbc;

    JdbcThreadRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(ThreadId id, SiteId site, ChildId child, Question question, boolean everybody, Instant at, Instant until) {
        jdbc.sql(ADD)
                .param("id", id.value())
                .param("site", site.value())
                .param("question", question.text())
                .param("wanted", question.wanted().stream().map(Advice::name).toArray(String[]::new))
                .param("place", question.place())
                .param("dueBy", question.dueBy())
                .param("frame", question.hasFrame())
                .param("mri", question.hasMri())
                .param("wait", question.theatreWaitWeeks())
                .param("everybody", everybody)
                .param("consent", question.consent())
                .param("at", Timestamp.from(at))
                .param("until", Timestamp.from(until))
                .update();
        jdbc.sql(ADD_CASE)
                .param("id", id.value())
                .param("site", site.value())
                .param("child", child.value())
                .update();
    }

    Optional<OpinionThread> find(ThreadId id) {
        return jdbc.sql(FIND)
                .param("id", id.value())
                .query(JdbcThreadRepository::thread)
                .optional();
    }

    /** The caller's threads, those open first, by the day they are due. */
    List<ThreadLine> lines(Optional<ChildId> child, Instant now) {
        return jdbc.sql(LINES)
                .param("child", child.map(ChildId::value).orElse(null))
                .param("now", Timestamp.from(now))
                .query(JdbcThreadRepository::line)
                .list();
    }

    List<OpenCall> calls() {
        return jdbc.sql(CALLS).query(JdbcThreadRepository::call).list();
    }

    boolean take(ThreadId id, Instant at) {
        return jdbc.sql(TAKE)
                .param("id", id.value())
                .param("at", Timestamp.from(at))
                .query(Boolean.class)
                .single();
    }

    /** Writes down that the caller looked; false when there is no such thread for them. */
    boolean look(UUID entry, ThreadId id, Optional<UUID> film, Instant at) {
        return jdbc.sql(LOOK)
                .param("entry", entry)
                .param("id", id.value())
                .param("film", film.orElse(null))
                .param("at", Timestamp.from(at))
                .query(Boolean.class)
                .single();
    }

    Optional<String> version(ThreadId id) {
        return jdbc.sql(VERSION).param("id", id.value()).query(String.class).optional();
    }

    Map<String, Long> newer(ThreadId id) {
        var newer = new HashMap<String, Long>();
        jdbc.sql(NEWER).param("id", id.value()).query(row -> {
            newer.put(row.getString("kind"), row.getLong("many"));
        });
        return newer;
    }

    private static OpinionThread thread(ResultSet row, int number) throws SQLException {
        return new OpinionThread(
                new ThreadId(row.getObject("id", UUID.class)),
                new SiteId(row.getObject("site_id", UUID.class)),
                row.getString("site_name"),
                new StaffId(row.getObject("asker", UUID.class)),
                row.getString("asker_name"),
                new Question(
                        row.getString("question"),
                        wanted(row),
                        row.getString("place"),
                        row.getObject("due_by", LocalDate.class),
                        row.getBoolean("has_frame"),
                        row.getBoolean("has_mri"),
                        row.getObject("theatre_wait_weeks", Integer.class),
                        row.getString("consent")),
                row.getBoolean("everybody"),
                row.getTimestamp("asked_at").toInstant(),
                row.getTimestamp("open_until").toInstant(),
                Optional.ofNullable(row.getObject("child_id", UUID.class)).map(ChildId::new),
                row.getBoolean("writes"),
                row.getBoolean("leads"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Map.of(),
                Optional.empty(),
                List.of());
    }

    private static ThreadLine line(ResultSet row, int number) throws SQLException {
        return new ThreadLine(
                new ThreadId(row.getObject("id", UUID.class)),
                row.getString("question"),
                wanted(row),
                row.getString("asker_name"),
                row.getString("site_name"),
                row.getTimestamp("asked_at").toInstant(),
                row.getObject("due_by", LocalDate.class),
                row.getBoolean("mine"),
                row.getBoolean("closed"),
                row.getLong("unread"),
                row.getLong("opinions"),
                row.getBoolean("answered"),
                row.getBoolean("reminded"),
                Optional.ofNullable(row.getString("outcome_due")).map(Outcome.Horizon::valueOf));
    }

    private static OpenCall call(ResultSet row, int number) throws SQLException {
        return new OpenCall(
                new ThreadId(row.getObject("thread_id", UUID.class)),
                row.getString("asker"),
                row.getString("site_name"),
                wanted(row),
                row.getTimestamp("asked_at").toInstant(),
                row.getObject("due_by", LocalDate.class));
    }

    private static List<Advice> wanted(ResultSet row) throws SQLException {
        return Arrays.stream((String[]) row.getArray("wanted").getArray())
                .map(Advice::valueOf)
                .toList();
    }
}
