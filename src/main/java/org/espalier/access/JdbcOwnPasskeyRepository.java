package org.espalier.access;

import java.util.HexFormat;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Passkeys as their owner reads them: never the key itself. */
@Repository
class JdbcOwnPasskeyRepository {

    private static final String OF = """
            select credential, label, created_at, last_used_at from passkey where staff_id = :staff
            order by last_used_at desc, credential""";
    private static final String REMOVE = "delete from passkey where staff_id = :staff and credential = :id";

    private final JdbcClient jdbc;

    JdbcOwnPasskeyRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<OwnPasskey> of(StaffId staff) {
        return jdbc.sql(OF)
                .param("staff", staff.value())
                .query((row, number) -> new OwnPasskey(
                        HexFormat.of().formatHex(row.getBytes("credential")),
                        row.getString("label"),
                        row.getTimestamp("created_at").toInstant(),
                        row.getTimestamp("last_used_at").toInstant()))
                .list();
    }

    boolean remove(StaffId staff, byte[] id) {
        return jdbc.sql(REMOVE).param("staff", staff.value()).param("id", id).update() > 0;
    }
}
