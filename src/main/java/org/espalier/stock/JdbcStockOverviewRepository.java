package org.espalier.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The stock of a hospital as a whole. */
@Repository
class JdbcStockOverviewRepository {

    private static final String SHELVES = "select " + StockRows.shelf("s", "s_") + """
            , coalesce(b.products, 0) as products, coalesce(b.pieces, 0) as pieces
            from stock_shelf s left join (
                select shelf_id, count(distinct product_id) as products, sum(quantity) as pieces from stock_balance
                where site_id = :site and quantity > 0 group by shelf_id
            ) b on b.shelf_id = s.id
            where s.site_id = :site and s.counted and s.kind <> 'IN_TRANSIT' and s.closed_on is null
            order by array_position(
                array['STORE', 'TRAY', 'CONSIGNMENT', 'QUARANTINE', 'ANALYSIS', 'KEPT', 'DISPOSED'], s.kind), s.name
            """;
    private static final String EXPIRING = "select b.quantity, l.id as lot_id, l.number as lot_number, l.expires_on, "
            + "l.held_since is not null as held, c.unit_cost, c.currency, coalesce(u.used, 0) as used, "
            + StockRows.shelf("s", "s_") + ", " + StockRows.PRODUCT + """
            from (
                select b.* from stock_lot l join stock_balance b on b.lot_id = l.id and b.site_id = :site and b.quantity
                    > 0
                    join stock_shelf s on s.id = b.shelf_id and s.kind in ('STORE', 'TRAY', 'CONSIGNMENT')
                where l.expires_on <= :until
                order by l.expires_on, l.id limit 100
            ) b join stock_lot l on l.id = b.lot_id join stock_product p on p.id = b.product_id
                join stock_shelf s on s.id = b.shelf_id
                left join stock_cost c on c.site_id = b.site_id and c.product_id = b.product_id and c.slot = b.slot
                left join lateral (
                    select sum(m.quantity) as used from stock_movement m
                        join stock_shelf t on t.id = m.to_shelf and t.kind = 'CHILDREN'
                    where m.from_site = :site and m.product_id = b.product_id and m.holder is not null
                        and m.recorded_at > :since and m.reverses is null
                        and not exists (select from stock_movement r where r.reverses = m.id)
                ) u on true
            order by l.expires_on, p.name, b.shelf_id
            """;
    private static final String SUPPLIES =
            "select b.quantity, coalesce(b.expires_on, date '9999-12-31') as until, " + StockRows.PRODUCT + """
            from (
                select b.product_id, l.expires_on, sum(b.quantity) as quantity
                from stock_balance b join stock_product p on p.id = b.product_id join stock_shelf s on s.id = b.shelf_id
                    left join stock_lot l on l.id = b.lot_id
                where b.site_id = :site and b.quantity > 0 and s.kind in ('STORE', 'TRAY', 'CONSIGNMENT')
                    and (l.expires_on is null or l.expires_on >= :today) and p.kind = any(cast(:kinds as text[]))
                group by b.product_id, l.expires_on
            ) b join stock_product p on p.id = b.product_id
            """;
    private static final String VALUE = """
            select s.kind, v.currency, round(sum(v.quantity * v.unit_cost), 2) as amount, sum(v.quantity) as pieces
            from (
                select b.shelf_id, b.quantity, k.unit_cost, k.currency from stock_balance b
                    join stock_cost k on k.site_id = b.site_id and k.product_id = b.product_id and k.slot = b.slot
                where b.site_id = :site and b.quantity > 0
                union all
                select b.shelf_id, b.quantity, c.unit_cost, c.currency from stock_balance b
                    join lateral (
                        select avg(k.unit_cost) as unit_cost, min(k.currency) as currency
                        from stock_slot_lot x join stock_cost k
                            on k.site_id = b.site_id and k.product_id = b.product_id and k.slot = x.lot_id
                        where x.shelf_id = b.shelf_id and x.product_id = b.product_id
                        having count(distinct k.currency) = 1
                    ) c on true
                where b.site_id = :site and b.quantity > 0 and b.lot_id is null and not exists (
                    select from stock_cost k
                    where k.site_id = b.site_id and k.product_id = b.product_id and k.slot = b.slot)
            ) v join stock_shelf s on s.id = v.shelf_id
            group by s.kind, v.currency order by s.kind, v.currency
            """;
    private static final String DEMAND = "select u.size, u.operations, coalesce(b.usable, 0) as usable, "
            + "coalesce(w.coming, 0) as coming, " + StockRows.PRODUCT + """
            from (
                select product_id, size, count(*) as operations from (
                    select m.product_id, m.holder, sum(m.quantity) as size from stock_movement m
                        join stock_shelf t on t.id = m.to_shelf and t.kind = 'CHILDREN'
                    where m.from_site = :site and m.holder is not null and m.recorded_at > :since and m.reverses is null
                        and not exists (select from stock_movement r where r.reverses = m.id)
                    group by m.product_id, m.holder
                ) taken group by product_id, size
            ) u join stock_product p on p.id = u.product_id
            left join (
                select b.product_id, sum(b.quantity) as usable from stock_balance b join stock_shelf s on s.id =
                    b.shelf_id
                where b.site_id = :site and s.kind in ('STORE', 'TRAY', 'CONSIGNMENT') group by b.product_id
            ) b on b.product_id = u.product_id
            left join (
                select product_id, sum(quantity) as coming from stock_balance where to_site = :site group by product_id
            ) w on w.product_id = u.product_id
            order by p.kind, p.name, p.length_mm, p.reference, u.size
            """;

    private final JdbcClient jdbc;

    JdbcStockOverviewRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<ShelfSummary> shelves(SiteId site) {
        return jdbc.sql(SHELVES)
                .param("site", site.value())
                .query((row, number) ->
                        new ShelfSummary(StockRows.shelf(row, "s_"), row.getInt("products"), row.getInt("pieces")))
                .list();
    }

    /** What expires until a day, the first hundred; nothing of it is taken to be used until then. */
    List<Expiring> expiring(SiteId site, LocalDate until, Instant since) {
        return jdbc.sql(EXPIRING)
                .param("site", site.value())
                .param("until", until)
                .param("since", since.atOffset(ZoneOffset.UTC))
                .query((row, number) -> new Expiring(
                        StockRows.shelf(row, "s_"),
                        StockRows.product(row),
                        StockRows.lot(row),
                        row.getInt("quantity"),
                        Optional.ofNullable(StockRows.cost(row)),
                        row.getInt("used"),
                        row.getInt("quantity")))
                .list();
    }

    /** What lies usable of some kinds. */
    List<Coverage.Supply> supplies(SiteId site, LocalDate today, Set<ProductKind> kinds) {
        var products = new HashMap<UUID, Product>();
        return jdbc.sql(SUPPLIES)
                .param("site", site.value())
                .param("today", today)
                .param("kinds", kinds.stream().map(ProductKind::name).toArray(String[]::new))
                .query((row, number) -> new Coverage.Supply(
                        StockRows.product(row, products),
                        row.getObject("until", LocalDate.class),
                        row.getInt("quantity")))
                .list();
    }

    List<StockValue> value(SiteId site) {
        return jdbc.sql(VALUE)
                .param("site", site.value())
                .query((row, number) -> new StockValue(
                        ShelfKind.valueOf(row.getString("kind")),
                        Currency.getInstance(row.getString("currency")),
                        row.getBigDecimal("amount"),
                        row.getInt("pieces")))
                .list();
    }

    List<Demand> demand(SiteId site, Instant since) {
        Map<ProductId, Demand> demands = new LinkedHashMap<>();
        jdbc.sql(DEMAND)
                .param("site", site.value())
                .param("since", since.atOffset(ZoneOffset.UTC))
                .query(JdbcStockOverviewRepository::demand)
                .list()
                .forEach(one -> demands.merge(one.product().id(), one, JdbcStockOverviewRepository::together));
        return List.copyOf(demands.values());
    }

    private static Demand demand(ResultSet row, int number) throws SQLException {
        return new Demand(
                StockRows.product(row),
                Map.of(row.getInt("size"), row.getInt("operations")),
                row.getInt("usable"),
                row.getInt("coming"));
    }

    private static Demand together(Demand one, Demand more) {
        var sizes = new HashMap<>(one.operationsBySize());
        sizes.putAll(more.operationsBySize());
        return new Demand(one.product(), sizes, one.usable(), one.onTheWay());
    }
}
