package org.espalier.access;

import java.sql.Timestamp;
import java.sql.Types;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class JdbcSessionRepository {

    private static final String OPEN = """
            select id, device, began_at, used_at from person_session
            where staff_id = :staff and ended_at is null and used_at > :idle and began_at > :whole
            order by used_at desc, id desc""";
    private static final String END = "select end_person_session(:id, :at)";
    private static final String END_ALL = "select end_person_sessions(:staff, :but, :at)";

    private final JdbcClient jdbc;

    JdbcSessionRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Those used after the one moment and begun after the other, the last used first. */
    List<OpenSession> open(StaffId staff, Instant idle, Instant whole, @Nullable UUID here) {
        return jdbc.sql(OPEN)
                .param("staff", staff.value())
                .param("idle", Timestamp.from(idle))
                .param("whole", Timestamp.from(whole))
                .query((row, number) -> {
                    var id = row.getObject("id", UUID.class);
                    return new OpenSession(
                            id,
                            row.getString("device"),
                            row.getTimestamp("began_at").toInstant(),
                            row.getTimestamp("used_at").toInstant(),
                            id.equals(here));
                })
                .list();
    }

    boolean end(UUID id, Instant at) {
        return jdbc.sql(END)
                .param("id", id)
                .param("at", Timestamp.from(at))
                .query(Boolean.class)
                .single();
    }

    void endAll(StaffId staff, @Nullable UUID but, Instant at) {
        jdbc.sql(END_ALL)
                .param("staff", staff.value())
                .param("but", but, Types.OTHER)
                .param("at", Timestamp.from(at))
                .query((row, number) -> number)
                .single();
    }
}
