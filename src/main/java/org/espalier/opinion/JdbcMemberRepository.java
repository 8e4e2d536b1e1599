package org.espalier.opinion;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.StaffId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Grants, the wish to hand on, and panels. */
@Repository
class JdbcMemberRepository {

    private static final String GRANT = """
            insert into opinion_member (thread_id, staff_id, scope, panel_id, granted_by, opens_at, ends_at)
            values (:thread, :staff, :scope, cast(:panel as uuid), current_staff(), :at, :until) on conflict do
                nothing""";

    private static final String EXTEND = """
            update opinion_member set ends_at = :until, why_ended = null
            where thread_id = :thread and staff_id = :staff""";

    private static final String END = """
            update opinion_member set ends_at = greatest(opens_at, cast(:at as timestamptz)), why_ended = :why
            where thread_id = :thread and ends_at > :at and (cast(:staff as uuid) is null or staff_id = :staff)""";

    private static final String OF = """
            select m.staff_id, s.name, m.scope, m.opens_at, m.ends_at, m.why_ended
            from opinion_member m join staff s on s.id = m.staff_id where m.thread_id = :thread order by s.name""";

    private static final String SURGEONS = """
            select staff_id, name, site_name from surgeons_of_network() where staff_id <> current_staff()
            order by name
            """;

    private static final String HAND_OVER = """
            insert into opinion_hand_over (id, thread_id, from_staff, to_staff, asked_at)
            values (:id, :thread, current_staff(), :to, :at) on conflict do nothing""";

    private static final String HAND_OVERS = """
            select o.id, o.from_staff, f.name as from_name, o.to_staff, t.name as to_name, o.agreed_at is not null as
                agreed
            from opinion_hand_over o join staff f on f.id = o.from_staff join staff t on t.id = o.to_staff
            where o.thread_id = :thread order by o.asked_at""";

    private static final String AGREE = """
            update opinion_hand_over set agreed_by = current_staff(), agreed_at = :at
            where id = :id and thread_id = :thread and agreed_at is null""";

    private static final String PANELS = """
            select p.id, p.name, s.name as made_by, p.made_by = current_staff() as mine
            from opinion_panel p join staff s on s.id = p.made_by order by p.name limit 200""";

    private static final String PANEL_MEMBERS = """
            select m.staff_id, s.name, '' as site_name
            from opinion_panel_member m join staff s on s.id = m.staff_id where m.panel_id = :panel order by s.name""";

    private static final String MAKE_PANEL = """
            insert into opinion_panel (id, name, made_by, made_at) values (:id, :name, current_staff(), :at)
            on conflict do nothing""";

    private static final String JOIN_PANEL =
            "insert into opinion_panel_member (panel_id, staff_id) values (:panel, :staff) on conflict do nothing";

    private static final String LEAVE_PANEL =
            "delete from opinion_panel_member where panel_id = :panel and staff_id = :staff";

    private final JdbcClient jdbc;

    JdbcMemberRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void grant(ThreadId thread, StaffId staff, @Nullable UUID panel, Instant at, Instant until) {
        jdbc.sql(GRANT)
                .param("thread", thread.value())
                .param("staff", staff.value())
                .param("scope", "ANSWER")
                .param("panel", panel)
                .param("at", Timestamp.from(at))
                .param("until", Timestamp.from(until))
                .update();
    }

    /** Sets the end of a grant anew, also of one that has ended. */
    boolean extend(ThreadId thread, StaffId staff, Instant until) {
        return jdbc.sql(EXTEND)
                        .param("thread", thread.value())
                        .param("staff", staff.value())
                        .param("until", Timestamp.from(until))
                        .update()
                == 1;
    }

    /** Ends the grants of one person, or of all; how many were open. */
    int end(ThreadId thread, Optional<StaffId> staff, Member.Ended why, Instant at) {
        return jdbc.sql(END)
                .param("thread", thread.value())
                .param("staff", staff.map(StaffId::value).orElse(null))
                .param("why", why.name())
                .param("at", Timestamp.from(at))
                .update();
    }

    List<Member> of(ThreadId thread) {
        return jdbc.sql(OF)
                .param("thread", thread.value())
                .query(JdbcMemberRepository::member)
                .list();
    }

    List<Colleague> surgeons() {
        return jdbc.sql(SURGEONS).query(JdbcMemberRepository::colleague).list();
    }

    boolean handOn(UUID id, ThreadId thread, StaffId to, Instant at) {
        return jdbc.sql(HAND_OVER)
                        .param("id", id)
                        .param("thread", thread.value())
                        .param("to", to.value())
                        .param("at", Timestamp.from(at))
                        .update()
                == 1;
    }

    List<HandOver> handOvers(ThreadId thread) {
        return jdbc.sql(HAND_OVERS)
                .param("thread", thread.value())
                .query((row, number) -> new HandOver(
                        row.getObject("id", UUID.class),
                        new StaffId(row.getObject("from_staff", UUID.class)),
                        row.getString("from_name"),
                        new StaffId(row.getObject("to_staff", UUID.class)),
                        row.getString("to_name"),
                        row.getBoolean("agreed")))
                .list();
    }

    boolean agree(ThreadId thread, UUID handOver, Instant at) {
        return jdbc.sql(AGREE)
                        .param("id", handOver)
                        .param("thread", thread.value())
                        .param("at", Timestamp.from(at))
                        .update()
                == 1;
    }

    List<Panel> panels() {
        return jdbc.sql(PANELS).query((row, number) -> panel(row)).list();
    }

    boolean make(UUID id, String name, Instant at) {
        return jdbc.sql(MAKE_PANEL)
                        .param("id", id)
                        .param("name", name)
                        .param("at", Timestamp.from(at))
                        .update()
                == 1;
    }

    void join(UUID panel, StaffId staff) {
        jdbc.sql(JOIN_PANEL).param("panel", panel).param("staff", staff.value()).update();
    }

    boolean leave(UUID panel, StaffId staff) {
        return jdbc.sql(LEAVE_PANEL)
                        .param("panel", panel)
                        .param("staff", staff.value())
                        .update()
                == 1;
    }

    List<Colleague> members(UUID panel) {
        return jdbc.sql(PANEL_MEMBERS)
                .param("panel", panel)
                .query(JdbcMemberRepository::colleague)
                .list();
    }

    private Panel panel(ResultSet row) throws SQLException {
        var id = row.getObject("id", UUID.class);
        return new Panel(id, row.getString("name"), row.getString("made_by"), row.getBoolean("mine"), members(id));
    }

    private static Colleague colleague(ResultSet row, int number) throws SQLException {
        return new Colleague(
                new StaffId(row.getObject("staff_id", UUID.class)), row.getString("name"), row.getString("site_name"));
    }

    private static Member member(ResultSet row, int number) throws SQLException {
        return new Member(
                new StaffId(row.getObject("staff_id", UUID.class)),
                row.getString("name"),
                row.getString("scope").equals("ANSWER"),
                row.getTimestamp("opens_at").toInstant(),
                row.getTimestamp("ends_at").toInstant(),
                Optional.ofNullable(row.getString("why_ended")).map(Member.Ended::valueOf));
    }
}
