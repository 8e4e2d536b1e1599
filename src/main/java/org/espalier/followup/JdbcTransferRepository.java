package org.espalier.followup;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Children on their way from one hospital to another. */
@Repository
class JdbcTransferRepository {

    private static final String ADD = """
            insert into transfer (id, child_id, from_site, to_site, child_name, birth_date, why, asked_by, asked_at)
            values (:id, :child, :from, :to, :name, :birth, :why, :by, :at)
            """;
    private static final String COLUMNS = """
            select t.id, t.child_id, t.from_site, t.to_site, t.child_name, t.birth_date, t.why, t.state,
                cast(t.asked_at at time zone s.time_zone as date) as asked_on,
                cast(t.answered_at at time zone s.time_zone as date) as answered_on
            from transfer t join site s on s.id = t.from_site
            """;
    private static final String OPEN = COLUMNS + """
            where t.state = 'ASKED' and (t.from_site = any(cast(:sites as uuid[])) or t.to_site = any(cast(:sites as
                uuid[])))
            order by t.asked_at limit 200
            """;
    private static final String HANDED_OVER = COLUMNS + """
            where t.state = 'ACCEPTED' and t.from_site = any(cast(:sites as uuid[])) and t.answered_at > :since
            order by t.answered_at desc limit 50
            """;
    private static final String OF_CHILD = COLUMNS + "where t.child_id = :child and t.state = 'ASKED'";
    private static final String ACCEPT = "select accept_transfer(:id, :at)";
    private static final String ANSWER = """
            update transfer set state = :state, answered_by = :by, answered_at = :at, answer = :answer
            where id = :id and state = 'ASKED'
            """;

    private final JdbcClient jdbc;

    JdbcTransferRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void ask(Transfer transfer, @Nullable StaffId by, Instant at) {
        jdbc.sql(ADD)
                .param("id", transfer.id())
                .param("child", transfer.child().value())
                .param("from", transfer.from().value())
                .param("to", transfer.to().value())
                .param("name", transfer.childName())
                .param("birth", transfer.birthDate())
                .param("why", transfer.why())
                .param("by", by == null ? null : by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** Those not answered yet from or to any of the hospitals, the oldest first. */
    List<Transfer> open(List<SiteId> sites) {
        return jdbc.sql(OPEN)
                .param("sites", sites.stream().map(SiteId::value).toArray(UUID[]::new))
                .query(JdbcTransferRepository::toTransfer)
                .list();
    }

    /** Those that other hospitals accepted from any of these since, the latest first. */
    List<Transfer> handedOver(List<SiteId> sites, Instant since) {
        return jdbc.sql(HANDED_OVER)
                .param("sites", sites.stream().map(SiteId::value).toArray(UUID[]::new))
                .param("since", since.atOffset(ZoneOffset.UTC))
                .query(JdbcTransferRepository::toTransfer)
                .list();
    }

    Optional<Transfer> open(ChildId child) {
        return jdbc.sql(OF_CHILD)
                .param("child", child.value())
                .query(JdbcTransferRepository::toTransfer)
                .optional();
    }

    /** The child that moved; empty when the transfer is not there to be accepted by the caller. */
    Optional<ChildId> accept(UUID transfer, Instant at) {
        return jdbc.sql(ACCEPT)
                .param("id", transfer)
                .param("at", at.atOffset(ZoneOffset.UTC))
                .query((row, number) -> Optional.ofNullable(row.getObject(1, UUID.class)))
                .single()
                .map(ChildId::new);
    }

    boolean answer(UUID transfer, Transfer.State state, String answer, @Nullable StaffId by, Instant at) {
        return jdbc.sql(ANSWER)
                        .param("id", transfer)
                        .param("state", state.name())
                        .param("answer", answer)
                        .param("by", by == null ? null : by.value())
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    private static Transfer toTransfer(ResultSet row, int number) throws SQLException {
        return new Transfer(
                row.getObject("id", UUID.class),
                new ChildId(row.getObject("child_id", UUID.class)),
                new SiteId(row.getObject("from_site", UUID.class)),
                new SiteId(row.getObject("to_site", UUID.class)),
                row.getString("child_name"),
                row.getObject("birth_date", LocalDate.class),
                row.getString("why"),
                Transfer.State.valueOf(row.getString("state")),
                row.getObject("asked_on", LocalDate.class),
                Optional.ofNullable(row.getObject("answered_on", LocalDate.class)));
    }
}
