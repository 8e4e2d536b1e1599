package org.espalier.access;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashSet;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.ResultSetExtractor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the caller is today; a role that ended yesterday is not there, whatever a session remembers. */
@Repository
class JdbcStandingRepository {

    private static final String STANDING = """
            select s.id, s.name, s.operator, m.site_id, m.role
            from staff s
            left join membership m on m.staff_id = s.id and m.valid @> current_date
            where s.id = :staff and s.active""";

    private final JdbcClient jdbc;

    JdbcStandingRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Transactional
    public Optional<Standing> find(StaffId staff) {
        ResultSetExtractor<Optional<Standing>> toStanding = rows -> toStanding(rows, staff);
        return jdbc.sql(STANDING).param("staff", staff.value()).query(toStanding);
    }

    private static Optional<Standing> toStanding(ResultSet rows, StaffId staff) throws SQLException {
        Optional<Standing> standing = Optional.empty();
        var held = new HashSet<Standing.Held>();
        while (rows.next()) {
            if (rows.getString("role") != null) {
                var site = new SiteId(rows.getObject("site_id", UUID.class));
                held.add(new Standing.Held(site, Role.valueOf(rows.getString("role"))));
            }
            standing = Optional.of(new Standing(staff, rows.getString("name"), rows.getBoolean("operator"), held));
        }
        return standing;
    }
}
