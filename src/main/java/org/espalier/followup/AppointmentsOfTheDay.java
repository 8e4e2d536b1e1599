package org.espalier.followup;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.film.ExpectedChildren;
import org.espalier.patient.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Tells the radiographer's list which children have an appointment, those who came already among them. */
@Repository
class AppointmentsOfTheDay implements ExpectedChildren {

    private static final String EXPECTED = """
            select child_id from visit
            where site_id = :site and appointment_on = :day and (closed_at is null or outcome = 'ARRIVED')
            order by appointment_at nulls last, id
            """;

    private final JdbcClient jdbc;

    AppointmentsOfTheDay(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<ChildId> expected(SiteId site, LocalDate day) {
        return jdbc.sql(EXPECTED)
                .param("site", site.value())
                .param("day", day)
                .query((row, number) -> new ChildId(row.getObject("child_id", UUID.class)))
                .list();
    }
}
