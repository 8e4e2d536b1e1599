package org.espalier.cost;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.treatment.ProcedureKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What operations take by agreement, and the days it holds for. */
@Repository
class JdbcAllowanceRepository {

    /** What every operation takes once. */
    private static final String EVERY_OPERATION = "OPERATION";

    private static final String ALL = """
            select kind, item, quantity, lower(valid) as from_day, upper(valid) as until_day from cost_allowance
            where site_id = :site and replaced = '00000000-0000-0000-0000-000000000000'
            order by kind, item, lower(valid) desc
            """;
    private static final String ADD = """
            insert into cost_allowance (id, site_id, kind, item, quantity, valid, recorded_by, recorded_at)
            values (:id, :site, :kind, :item, :quantity, daterange(:from, :until), :by, :at)
            """;

    private final JdbcClient jdbc;
    private final JdbcSuccession succession;

    JdbcAllowanceRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
        succession = new JdbcSuccession(jdbc, "cost_allowance", "kind = :kind and item = :item");
    }

    List<Allowance> all(SiteId site) {
        return jdbc.sql(ALL)
                .param("site", site.value())
                .query(JdbcAllowanceRepository::allowance)
                .list();
    }

    void add(UUID id, SiteId site, Allowance data, Optional<StaffId> by, Instant at) {
        var key = Map.of(
                "kind",
                data.kind().map(Enum::name).orElse(EVERY_OPERATION),
                "item",
                data.item().name());
        var next = succession.makeRoom(site, key, data.from());
        jdbc.sql(ADD)
                .params(key)
                .param("site", site.value())
                .param("from", data.from())
                .param("id", id)
                .param("quantity", data.quantity())
                .param("until", next.orElse(null))
                .param("by", by.map(StaffId::value).orElse(null))
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    private static Allowance allowance(ResultSet row, int number) throws SQLException {
        var kind = row.getString("kind");
        return new Allowance(
                kind.equals(EVERY_OPERATION) ? Optional.empty() : Optional.of(ProcedureKind.valueOf(kind)),
                TariffItem.valueOf(row.getString("item")),
                row.getBigDecimal("quantity"),
                row.getObject("from_day", LocalDate.class),
                Optional.ofNullable(row.getObject("until_day", LocalDate.class)));
    }
}
