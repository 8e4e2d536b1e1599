package org.espalier.reading;

import java.time.LocalDate;
import java.util.List;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What stands of a child's earlier films, as far as a later film is held against it. */
@Repository
class EarlierNumbers {

    private static final List<String> HELD_AGAINST = List.of(
            Quantity.FEMUR_LENGTH.code(),
            Quantity.TIBIA_LENGTH.code(),
            Quantity.MLDFA.code(),
            Quantity.MMPTA.code(),
            Quantity.FEMUR_SCREW_ANGLE.code(),
            Quantity.TIBIA_SCREW_ANGLE.code());

    private static final String BEFORE = """
            select f.taken_on, n.side, n.quantity, n.value
            from reading_number n
            join reading r on r.id = n.reading_id
            join film f on f.id = r.film_id and f.child_id = r.child_id
            where n.site_id = :site and n.child_id = :child and n.quantity in (:quantities) and not n.doubtful
                and f.taken_on < :day and r.second_of is null
                and not exists (select from reading later where later.supersedes = r.id)
            """;

    private final JdbcClient jdbc;

    EarlierNumbers(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<EarlierNumber> before(SiteId site, ChildId child, LocalDate day) {
        return jdbc.sql(BEFORE)
                .param("site", site.value())
                .param("child", child.value())
                .param("quantities", HELD_AGAINST)
                .param("day", day)
                .query((row, number) -> new EarlierNumber(
                        row.getObject("taken_on", LocalDate.class),
                        Side.valueOf(row.getString("side")),
                        Quantity.ofCode(row.getString("quantity")).orElseThrow(),
                        row.getDouble("value")))
                .list();
    }
}
