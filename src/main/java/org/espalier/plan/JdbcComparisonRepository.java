package org.espalier.plan;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** Comparisons as they were kept. */
@Repository
class JdbcComparisonRepository {

    private static final String ADD = """
            insert into plan_comparison (id, site_id, recorded_site, child_id, side, compared_on, meant, aim,
                expectation,
                expected_hka_deg, expected_by, options, recorded_by, recorded_at)
            select :id, c.site_id, c.site_id, c.id, :side, :on, :meant, :aim, :expectation, :hka, :by,
                cast(:options as jsonb), :staff, :at
            from child c where c.id = :child
            on conflict do nothing
            """;
    private static final String ALL = """
            select p.id, p.side, p.compared_on, p.meant, p.aim, p.expectation, p.expected_hka_deg, p.expected_by,
                p.options,
                p.recorded_by, p.recorded_at, s.name as by_name
            from plan_comparison p left join staff s on s.id = p.recorded_by
            where p.child_id = :child
            order by p.recorded_at desc, p.id desc
            """;

    private final JdbcClient jdbc;
    private final JsonMapper json;

    JdbcComparisonRepository(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** Keeps a comparison; the same id is kept once. */
    void add(ChildId child, SavedComparison kept) {
        var intent = kept.intent();
        jdbc.sql(ADD)
                .param("child", child.value())
                .param("id", kept.id().value())
                .param("side", kept.side().name())
                .param("on", kept.on())
                .param("meant", intent.map(one -> one.meant().name()).orElse(null))
                .param("aim", intent.map(Intent::aim).orElse(null))
                .param("expectation", intent.map(Intent::expectation).orElse(null))
                .param(
                        "hka",
                        intent.flatMap(one -> Optional.ofNullable(one.expectedHka()))
                                .map(Angle::degrees)
                                .orElse(null))
                .param("by", intent.map(Intent::expectedBy).orElse(null))
                .param("options", json.writeValueAsString(kept.options()))
                .param("staff", kept.staff().map(StaffId::value).orElse(null))
                .param("at", kept.at().atOffset(ZoneOffset.UTC))
                .update();
    }

    /** Those of a child, the newest first. */
    List<SavedComparison> all(ChildId child) {
        return jdbc.sql(ALL)
                .param("child", child.value())
                .query((row, number) -> comparison(row))
                .list();
    }

    private SavedComparison comparison(ResultSet row) throws SQLException {
        return new SavedComparison(
                new ComparisonId(row.getObject("id", UUID.class)),
                Side.valueOf(row.getString("side")),
                row.getObject("compared_on", LocalDate.class),
                intent(row),
                List.of(json.readValue(row.getString("options"), OptionCells[].class)),
                Optional.ofNullable(row.getObject("recorded_by", UUID.class)).map(StaffId::new),
                Optional.ofNullable(row.getString("by_name")).orElse(""),
                row.getObject("recorded_at", OffsetDateTime.class).toInstant());
    }

    private static Optional<Intent> intent(ResultSet row) throws SQLException {
        var meant = row.getString("meant");
        if (meant == null) {
            return Optional.empty();
        }
        var hka = row.getBigDecimal("expected_hka_deg");
        return Optional.of(new Intent(
                Option.valueOf(meant),
                row.getString("aim"),
                row.getString("expectation"),
                hka == null ? null : new Angle(hka.doubleValue()),
                row.getObject("expected_by", LocalDate.class)));
    }
}
