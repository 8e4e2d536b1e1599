package org.espalier.access;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.ResultSetExtractor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class JdbcStaffRepository {

    private static final String PEOPLE = """
            select s.id, s.login, s.name, s.active, s.operator, m.site_id, m.role, lower(m.valid) as begins,
                upper(m.valid) - 1 as ends
            from staff s
            left join membership m on m.staff_id = s.id and coalesce(upper(m.valid) > current_date, true)
            where s.kind = 'person' and (cast(:staff as uuid) is null or s.id = :staff)
            order by s.name, s.login, m.role, m.site_id""";
    private static final String FIRST = "select add_first_operator(:id, :login, :hash, :at)";
    private static final String ADD = "insert into staff (id, login, name, kind) values (:id, :login, :name, 'person')";
    private static final String GIVE = """
            insert into membership (staff_id, site_id, role, valid)
            values (:staff, :site, :role, daterange(:begins, :ends, '[]'))""";
    private static final String TAKE_BACK = """
            delete from membership
            where staff_id = :staff and site_id = :site and role = :role and lower(valid) = :begins
                and lower(valid) >= :today""";
    private static final String END = """
            update membership set valid = daterange(lower(valid), :today, '[)')
            where staff_id = :staff and site_id = :site and role = :role and lower(valid) = :begins""";
    private static final String ACTIVE = "update staff set active = :active where id = :staff";

    private final JdbcClient jdbc;

    JdbcStaffRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<StaffMember> all() {
        return jdbc.sql(PEOPLE).param("staff", null, Types.OTHER).query(toPeople());
    }

    StaffMember of(StaffId staff) {
        return jdbc.sql(PEOPLE).param("staff", staff.value()).query(toPeople()).getFirst();
    }

    boolean addFirstOperator(StaffId id, String login, String hash, Instant at) {
        return jdbc.sql(FIRST)
                .param("id", id.value())
                .param("login", login)
                .param("hash", hash)
                .param("at", Timestamp.from(at))
                .query(Boolean.class)
                .single();
    }

    void add(StaffId id, String login, String name) {
        jdbc.sql(ADD)
                .param("id", id.value())
                .param("login", login)
                .param("name", name)
                .update();
    }

    void give(StaffId staff, Membership membership) {
        bind(GIVE, staff, membership)
                .param("ends", membership.until(), Types.DATE)
                .update();
    }

    void end(StaffId staff, Membership membership, LocalDate today) {
        int takenBack = bind(TAKE_BACK, staff, membership).param("today", today).update();
        if (takenBack == 0) {
            bind(END, staff, membership).param("today", today).update();
        }
    }

    void setActive(StaffId staff, boolean active) {
        jdbc.sql(ACTIVE).param("staff", staff.value()).param("active", active).update();
    }

    private JdbcClient.StatementSpec bind(String sql, StaffId staff, Membership membership) {
        return jdbc.sql(sql)
                .param("staff", staff.value())
                .param("site", membership.site().value())
                .param("role", membership.role().name())
                .param("begins", membership.from());
    }

    private static ResultSetExtractor<List<StaffMember>> toPeople() {
        return rows -> {
            var people = new LinkedHashMap<UUID, StaffMember>();
            while (rows.next()) {
                var person = people.computeIfAbsent(rows.getObject("id", UUID.class), id -> toPerson(id, rows));
                if (rows.getString("role") != null) {
                    person.memberships().add(toMembership(rows));
                }
            }
            return List.copyOf(people.values());
        };
    }

    private static StaffMember toPerson(UUID id, ResultSet row) {
        try {
            return new StaffMember(
                    new StaffId(id),
                    row.getString("login"),
                    row.getString("name"),
                    row.getBoolean("active"),
                    row.getBoolean("operator"),
                    new ArrayList<>());
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Membership toMembership(ResultSet row) throws SQLException {
        return new Membership(
                new SiteId(row.getObject("site_id", UUID.class)),
                Role.valueOf(row.getString("role")),
                row.getObject("begins", LocalDate.class),
                row.getObject("ends", LocalDate.class));
    }
}
