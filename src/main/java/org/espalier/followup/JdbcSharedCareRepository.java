package org.espalier.followup;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Children in the care of two hospitals. */
@Repository
class JdbcSharedCareRepository {

    private static final String ADD = """
            insert into shared_care (id, child_id, site_id, to_site, child_name, birth_date, why, asked_by, asked_at)
            values (:id, :child, :from, :with, :name, :birth, :why, :by, :at)
            """;
    private static final String COLUMNS = """
            select t.id, t.child_id, t.site_id, t.to_site, t.child_name, t.birth_date, t.why, t.state,
                cast(t.asked_at at time zone s.time_zone as date) as asked_on
            from shared_care t join site s on s.id = t.site_id
            """;
    private static final String OPEN = COLUMNS + """
            where t.state in ('ASKED', 'ACCEPTED')
                and (t.site_id = any(cast(:sites as uuid[])) or t.to_site = any(cast(:sites as uuid[])))
            order by t.state, t.asked_at, t.id limit 200
            """;
    private static final String OF_CHILD = COLUMNS + """
            where t.child_id = :child and t.state in ('ASKED', 'ACCEPTED') order by t.asked_at, t.id
            """;
    private static final String ANSWER = """
            update shared_care set state = :state, answered_by = :by, answered_at = :at, words = :words
            where id = :id and state = 'ASKED'
            """;
    private static final String END = """
            update shared_care set ended_by = :by, ended_at = :at, words = :words,
                state = case state when 'ASKED' then 'WITHDRAWN' else 'ENDED' end
            where id = :id and state in ('ASKED', 'ACCEPTED')
            """;

    private final JdbcClient jdbc;

    JdbcSharedCareRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void ask(SharedCare asked, StaffId by, Instant at) {
        jdbc.sql(ADD)
                .param("id", asked.id())
                .param("child", asked.child().value())
                .param("from", asked.from().value())
                .param("with", asked.with().value())
                .param("name", asked.childName())
                .param("birth", asked.birthDate())
                .param("why", asked.why())
                .param("by", by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** Those not answered yet first, then those that run, each the oldest first. */
    List<SharedCare> open(List<SiteId> sites) {
        return jdbc.sql(OPEN)
                .param("sites", sites.stream().map(SiteId::value).toArray(UUID[]::new))
                .query(JdbcSharedCareRepository::toSharedCare)
                .list();
    }

    List<SharedCare> open(ChildId child) {
        return jdbc.sql(OF_CHILD)
                .param("child", child.value())
                .query(JdbcSharedCareRepository::toSharedCare)
                .list();
    }

    boolean answer(UUID id, boolean accepts, String words, StaffId by, Instant at) {
        return change(ANSWER, id, words, by, at)
                        .param("state", accepts ? "ACCEPTED" : "DECLINED")
                        .update()
                == 1;
    }

    boolean end(UUID id, String words, StaffId by, Instant at) {
        return change(END, id, words, by, at).update() == 1;
    }

    private JdbcClient.StatementSpec change(String sql, UUID id, String words, StaffId by, Instant at) {
        return jdbc.sql(sql)
                .param("id", id)
                .param("words", words.isBlank() ? null : words.strip())
                .param("by", by.value())
                .param("at", at.atOffset(ZoneOffset.UTC));
    }

    private static SharedCare toSharedCare(ResultSet row, int number) throws SQLException {
        return new SharedCare(
                row.getObject("id", UUID.class),
                new ChildId(row.getObject("child_id", UUID.class)),
                new SiteId(row.getObject("site_id", UUID.class)),
                new SiteId(row.getObject("to_site", UUID.class)),
                row.getString("child_name"),
                row.getObject("birth_date", LocalDate.class),
                row.getString("why"),
                SharedCare.State.valueOf(row.getString("state")),
                row.getObject("asked_on", LocalDate.class));
    }
}
