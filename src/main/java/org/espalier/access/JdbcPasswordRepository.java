package org.espalier.access;

import java.sql.Timestamp;
import java.time.Instant;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class JdbcPasswordRepository {

    private static final String OF = """
            select s.login, s.name, p.hash from staff s cross join lateral sign_in_of(s.login) p where s.id = :staff""";
    private static final String SET = "select set_password(:staff, :hash, :at)";

    private final JdbcClient jdbc;

    JdbcPasswordRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    record Kept(String login, String name, String hash) {

        @Override
        public String toString() {
            return login;
        }
    }

    Kept of(StaffId staff) {
        return jdbc.sql(OF)
                .param("staff", staff.value())
                .query((row, number) -> new Kept(row.getString("login"), row.getString("name"), row.getString("hash")))
                .single();
    }

    void set(StaffId staff, String hash, Instant at) {
        jdbc.sql(SET)
                .param("staff", staff.value())
                .param("hash", hash)
                .param("at", Timestamp.from(at))
                .query((row, number) -> number)
                .single();
    }
}
