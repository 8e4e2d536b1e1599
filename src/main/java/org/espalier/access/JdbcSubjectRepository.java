package org.espalier.access;

import java.sql.Timestamp;
import java.time.Instant;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Who is who at the provider of single sign-on. */
@Repository
class JdbcSubjectRepository {

    private static final String FIND = "select subject from staff_subject where issuer = :issuer and staff_id = :staff";
    private static final String REMOVE = "delete from staff_subject where issuer = :issuer and staff_id = :staff";
    private static final String ADD = """
            insert into staff_subject (issuer, subject, staff_id, added_by, added_at)
            values (:issuer, :subject, :staff, :by, :at)""";

    private final JdbcClient jdbc;

    JdbcSubjectRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<String> find(String issuer, StaffId staff) {
        return jdbc.sql(FIND)
                .param("issuer", issuer)
                .param("staff", staff.value())
                .query(String.class)
                .optional();
    }

    void remove(String issuer, StaffId staff) {
        jdbc.sql(REMOVE).param("issuer", issuer).param("staff", staff.value()).update();
    }

    void add(String issuer, String subject, StaffId staff, StaffId by, Instant at) {
        jdbc.sql(ADD)
                .param("issuer", issuer)
                .param("subject", subject)
                .param("staff", staff.value())
                .param("by", by.value())
                .param("at", Timestamp.from(at))
                .update();
    }
}
