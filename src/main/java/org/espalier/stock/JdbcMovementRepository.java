package org.espalier.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Movements, as they were written. */
@Repository
class JdbcMovementRepository {

    private static final String MOVE = """
            select outcome, available, lots, expires from move_stock(:id, :product, :from, :to, cast(:lot as uuid),
                cast(:lots as uuid[]), :quantity, cast(:holder as uuid), cast(:reverses as uuid), cast(:why as text),
                cast(:cost as numeric), cast(:currency as text), :at)
            """;
    private static final String SELECT = "select m.id, m.lot_id as certain, m.quantity, m.holder, m.reverses, m.why, "
            + "m.unit_cost, m.currency, m.recorded_at, s.name as by_name, "
            + "array(select x.lot_id from stock_movement_lot x where x.movement_id = m.id) as mixed, "
            + "exists (select from stock_movement r where r.reverses = m.id) as reversed, "
            + StockRows.shelf("f", "f_") + ", " + StockRows.shelf("t", "t_") + ", " + StockRows.PRODUCT + """
            from MOVEMENTS m join stock_product p on p.id = m.product_id join stock_shelf f on f.id = m.from_shelf
                join stock_shelf t on t.id = m.to_shelf left join staff s on s.id = m.recorded_by
            """;
    private static final String ONE = of("(select * from stock_movement where id = :id)", "m.id");
    private static final String LATEST = of("""
            (select * from (
                (select * from stock_movement where from_site = :site order by recorded_at desc limit :limit)
                union
                (select * from stock_movement where to_site = :site order by recorded_at desc limit :limit)
            ) both_sides order by recorded_at desc limit :limit)""", "m.recorded_at desc");
    private static final String OF_PRODUCT = of("""
            (select * from stock_movement where product_id = :product and (from_site = :site or to_site = :site)
            order by recorded_at desc limit :limit)""", "m.recorded_at desc");
    private static final String OF_LOT = of("""
            (select * from stock_movement where (from_site = :site or to_site = :site) and id in (
                select id from stock_movement where lot_id = :lot
                union all select movement_id from stock_movement_lot where lot_id = :lot)
            order by recorded_at desc limit :limit)""", "m.recorded_at desc");
    private static final String OF_HOLDER =
            of("(select * from stock_movement where holder = :holder order by recorded_at limit 200)", "m.recorded_at");
    private static final String HOLDERS = """
            select m.holder, m.id, m.product_id, m.quantity, m.lot_id is not null as certain
            from stock_movement m join stock_shelf t on t.id = m.to_shelf
            where t.kind = 'CHILDREN' and m.reverses is null and m.id in (
                select id from stock_movement where lot_id = :lot
                union all select movement_id from stock_movement_lot where lot_id = :lot)
                and not exists (select from stock_movement r where r.reverses = m.id)
            order by m.recorded_at limit 5000
            """;
    private static final String COST = """
            select round(avg(unit_cost), 2) as unit_cost, min(currency) as currency from stock_cost
            where site_id = :site and product_id = :product and (slot = any(cast(:lots as uuid[]))
                or cardinality(cast(:lots as uuid[])) = 0 and slot = '00000000-0000-0000-0000-000000000000')
            having count(distinct currency) = 1
            """;

    private final JdbcClient jdbc;
    private final JdbcLotRepository lots;

    JdbcMovementRepository(JdbcClient jdbc, JdbcLotRepository lots) {
        this.jdbc = jdbc;
        this.lots = lots;
    }

    private static String of(String movements, String order) {
        return SELECT.replace("MOVEMENTS", movements) + "order by " + order;
    }

    MoveOutcome move(Step step) {
        var cost = step.cost();
        return jdbc.sql(MOVE)
                .param("id", step.id())
                .param("product", step.product().value())
                .param("from", step.from().value())
                .param("to", step.to().value())
                .param("lot", step.lot() == null ? null : step.lot().value())
                .param("lots", step.lots() == null ? null : StockRows.ids(step.lots()))
                .param("quantity", step.quantity())
                .param("holder", step.holder())
                .param("reverses", step.reverses())
                .param("why", step.why())
                .param("cost", cost == null ? null : cost.amount())
                .param("currency", cost == null ? null : cost.currency().getCurrencyCode())
                .param("at", step.at().atOffset(ZoneOffset.UTC))
                .query((row, number) -> new MoveOutcome(
                        row.getString("outcome"),
                        row.getInt("available"),
                        StockRows.lots(row.getArray("lots")),
                        row.getObject("expires", LocalDate.class)))
                .single();
    }

    Optional<Movement> find(UUID id) {
        return movements(jdbc.sql(ONE).param("id", id)).stream().findFirst();
    }

    /** The last of a hospital, the latest first. */
    List<Movement> latest(SiteId site, int limit) {
        return movements(jdbc.sql(LATEST).param("site", site.value()).param("limit", limit));
    }

    List<Movement> of(SiteId site, ProductId product, int limit) {
        return movements(jdbc.sql(OF_PRODUCT)
                .param("site", site.value())
                .param("product", product.value())
                .param("limit", limit));
    }

    List<Movement> of(SiteId site, LotId lot, int limit) {
        return movements(jdbc.sql(OF_LOT)
                .param("site", site.value())
                .param("lot", lot.value())
                .param("limit", limit));
    }

    List<Movement> of(UUID holder) {
        return movements(jdbc.sql(OF_HOLDER).param("holder", holder));
    }

    /** For whom pieces were used that are, or may be, of the lot. */
    List<LotUse> uses(LotId lot) {
        return jdbc.sql(HOLDERS)
                .param("lot", lot.value())
                .query((row, number) -> new LotUse(
                        row.getObject("holder", UUID.class),
                        row.getObject("id", UUID.class),
                        new ProductId(row.getObject("product_id", UUID.class)),
                        lot,
                        row.getInt("quantity"),
                        row.getBoolean("certain")))
                .list();
    }

    /**
     * What the hospital last paid for one piece; of several lots their mean; empty when not known or in two currencies.
     */
    Optional<UnitCost> cost(SiteId site, ProductId product, List<LotId> of) {
        return jdbc.sql(COST)
                .param("site", site.value())
                .param("product", product.value())
                .param("lots", StockRows.ids(of))
                .query((row, number) -> Optional.ofNullable(StockRows.cost(row)))
                .optional()
                .flatMap(found -> found);
    }

    private List<Movement> movements(JdbcClient.StatementSpec statement) {
        var read = statement.query(JdbcMovementRepository::row).list();
        var named = lots.find(
                read.stream().flatMap(one -> one.lots().stream()).distinct().toList());
        return read.stream()
                .map(one -> one.toMovement(one.lots().stream()
                        .map(named::get)
                        .filter(Objects::nonNull)
                        .toList()))
                .toList();
    }

    private static Read row(ResultSet row, int number) throws SQLException {
        var certain = row.getObject("certain", UUID.class);
        return new Read(
                new Movement(
                        row.getObject("id", UUID.class),
                        StockRows.product(row),
                        List.of(),
                        row.getInt("quantity"),
                        StockRows.shelf(row, "f_"),
                        StockRows.shelf(row, "t_"),
                        Optional.ofNullable(row.getObject("holder", UUID.class)),
                        Optional.ofNullable(row.getObject("reverses", UUID.class)),
                        row.getBoolean("reversed"),
                        Optional.ofNullable(row.getString("why")),
                        Optional.ofNullable(StockRows.cost(row)),
                        Optional.ofNullable(row.getString("by_name")),
                        row.getObject("recorded_at", OffsetDateTime.class).toInstant()),
                Stream.concat(
                                Stream.ofNullable(certain).map(LotId::new),
                                StockRows.lots(row.getArray("mixed")).stream())
                        .toList());
    }

    /** A movement whose lots are not named yet. */
    private record Read(Movement movement, List<LotId> lots) {

        Movement toMovement(List<@Nullable Lot> named) {
            return new Movement(
                    movement.id(),
                    movement.product(),
                    named.stream().flatMap(Stream::ofNullable).toList(),
                    movement.quantity(),
                    movement.from(),
                    movement.to(),
                    movement.holder(),
                    movement.reverses(),
                    movement.reversed(),
                    movement.why(),
                    movement.cost(),
                    movement.by(),
                    movement.at());
        }
    }
}
