package org.espalier.safety;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.espalier.stock.LotId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Safety notices and who carries their lots. */
@Repository
class JdbcSafetyRepository {

    private static final String OPEN = "select open_safety_notice(:id, :lot, :site, :source, :why, :at)";
    private static final String RENEW = "select renew_safety_notice(:id, :at)";
    private static final String CLOSE = "select close_safety_notice(:id, :at)";
    private static final String SELECT = """
            select n.id, n.lot_id, l.number, p.name || ' · ' || p.reference as product, n.source, n.why,
                n.opened_at_site,
                s.name as opened_by, n.opened_at, n.closed_at
            from safety_notice n join stock_lot l on l.id = n.lot_id join stock_product p on p.id = l.product_id
                join staff s on s.id = n.opened_by
            """;
    private static final String ALL = SELECT + "order by n.closed_at is not null, n.opened_at desc limit 100";
    private static final String ONE = SELECT + "where n.id = :id";
    private static final String PROGRESS = """
            select p.* from safety_progress(:id) p join site s on s.id = p.site_id order by s.name
            """;
    private static final String CARRIERS = """
            select c.child_id, c.site_id, c.certainty, c.since, c.surgeon, s.name as told_by, c.told_at, c.told_how
            from safety_carrier c left join staff s on s.id = c.told_by
            where c.notice_id = :id and c.site_id = any(cast(:sites as uuid[]))
            order by c.told_at is not null, array_position(array['CERTAIN', 'POSSIBLE', 'FORMER'], c.certainty), c.since
            limit 1000
            """;
    private static final String TELL = """
            update safety_carrier set told_by = :by, told_at = :at, told_how = :how
            where notice_id = :id and child_id = :child and certainty <> 'FORMER' and told_at is null
            """;

    private final JdbcClient jdbc;

    JdbcSafetyRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** How many pieces went to quarantine; empty when the lot has an open notice, or the caller may not. */
    OptionalInt open(UUID id, LotId lot, SiteId site, String source, String why, Instant at) {
        return number(jdbc.sql(OPEN)
                .param("id", id)
                .param("lot", lot.value())
                .param("site", site.value())
                .param("source", source)
                .param("why", why)
                .param("at", at.atOffset(ZoneOffset.UTC)));
    }

    OptionalInt renew(UUID id, Instant at) {
        return number(jdbc.sql(RENEW).param("id", id).param("at", at.atOffset(ZoneOffset.UTC)));
    }

    private static OptionalInt number(JdbcClient.StatementSpec statement) {
        return statement
                .query((row, number) -> {
                    int pieces = row.getInt(1);
                    return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(pieces);
                })
                .single();
    }

    boolean close(UUID id, Instant at) {
        return jdbc.sql(CLOSE)
                .param("id", id)
                .param("at", at.atOffset(ZoneOffset.UTC))
                .query(Boolean.class)
                .single();
    }

    /** Those open first, then the latest first. */
    List<SafetyNotice> all() {
        return jdbc.sql(ALL).query(JdbcSafetyRepository::notice).list();
    }

    Optional<SafetyNotice> find(UUID id) {
        return jdbc.sql(ONE).param("id", id).query(JdbcSafetyRepository::notice).optional();
    }

    List<SiteProgress> progress(UUID id) {
        return jdbc.sql(PROGRESS)
                .param("id", id)
                .query((row, number) -> new SiteProgress(
                        new SiteId(row.getObject("site_id", UUID.class)),
                        row.getInt("quarantined"),
                        row.getInt("elsewhere"),
                        row.getInt("certain"),
                        row.getInt("possible"),
                        row.getInt("former"),
                        row.getInt("told")))
                .list();
    }

    /** Those still to be told first. */
    List<Carrier> carriers(UUID id, List<SiteId> sites) {
        return jdbc.sql(CARRIERS)
                .param("id", id)
                .param("sites", sites.stream().map(SiteId::value).toArray(UUID[]::new))
                .query(JdbcSafetyRepository::carrier)
                .list();
    }

    boolean tell(UUID id, ChildId child, String how, StaffId by, Instant at) {
        return jdbc.sql(TELL)
                        .param("id", id)
                        .param("child", child.value())
                        .param("how", how)
                        .param("by", by.value())
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    private static SafetyNotice notice(ResultSet row, int number) throws SQLException {
        return new SafetyNotice(
                row.getObject("id", UUID.class),
                new LotId(row.getObject("lot_id", UUID.class)),
                row.getString("number"),
                row.getString("product"),
                row.getString("source"),
                row.getString("why"),
                new SiteId(row.getObject("opened_at_site", UUID.class)),
                row.getString("opened_by"),
                row.getObject("opened_at", OffsetDateTime.class).toInstant(),
                Optional.ofNullable(instant(row, "closed_at")));
    }

    private static Carrier carrier(ResultSet row, int number) throws SQLException {
        var toldAt = instant(row, "told_at");
        return new Carrier(
                new ChildId(row.getObject("child_id", UUID.class)),
                new SiteId(row.getObject("site_id", UUID.class)),
                Carrier.Certainty.valueOf(row.getString("certainty")),
                row.getObject("since", LocalDate.class),
                row.getString("surgeon"),
                toldAt == null
                        ? Optional.empty()
                        : Optional.of(new Carrier.Told(row.getString("told_by"), toldAt, row.getString("told_how"))));
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        var at = row.getObject(column, OffsetDateTime.class);
        return at == null ? null : at.toInstant();
    }
}
