package org.espalier.stock;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What lies on the shelves. */
@Repository
class JdbcShelfLineRepository {

    private static final String SELECT = "select b.shelf_id, b.lot_id, b.quantity, "
            + "l.number as lot_number, l.expires_on, l.held_since is not null as held, " + StockRows.PRODUCT + """
            from stock_balance b join stock_product p on p.id = b.product_id left join stock_lot l on l.id = b.lot_id
            """;
    private static final String ON_SHELF = SELECT + """
            where b.shelf_id = :shelf and b.quantity > 0
                and (:like = '%%' or p.name ilike :like or p.reference ilike :like or l.number ilike :like
                    or b.lot_id is null and exists (
                        select from stock_slot_lot s join stock_lot m on m.id = s.lot_id
                        where s.shelf_id = b.shelf_id and s.product_id = b.product_id and m.number ilike :like))
            order by p.kind, p.name, p.diameter_mm, p.length_mm, p.reference, l.expires_on, l.number limit :most
            """;
    private static final String OF_PRODUCT = SELECT + """
            where b.site_id = :site and b.product_id = :product and b.quantity > 0 order by l.expires_on, l.number
            """;
    private static final String USED = SELECT + """
            where b.site_id = :site and b.quantity > 0
                and p.kind in ('PLATE', 'SCREW', 'WIRE', 'STAPLE', 'FRAME', 'CONSUMABLE')
            order by p.kind, p.name, p.diameter_mm, p.length_mm, p.reference, l.expires_on, l.number limit 2000
            """;
    private static final String OF_LOT = SELECT + """
            where b.site_id = :site and b.quantity > 0 and (b.lot_id = :lot or b.lot_id is null and exists (
                select from stock_slot_lot s
                where s.shelf_id = b.shelf_id and s.product_id = b.product_id and s.lot_id = :lot))
                and b.product_id = (select product_id from stock_lot where id = :lot)
            """;
    private static final String SLOTS = """
            select s.shelf_id, s.product_id, l.id as lot_id, l.number as lot_number, l.expires_on,
                l.held_since is not null as held
            from stock_slot_lot s join stock_lot l on l.id = s.lot_id
            where s.shelf_id = any(cast(:shelves as uuid[])) order by l.expires_on, l.number
            """;

    private final JdbcClient jdbc;

    JdbcShelfLineRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<ShelfLine> all(ShelfId shelf) {
        return on(shelf, "", Integer.MAX_VALUE);
    }

    /** Those that have the part in name, reference or lot; so many and no more. */
    List<ShelfLine> on(ShelfId shelf, String part, int most) {
        return lines(jdbc.sql(ON_SHELF)
                .param("shelf", shelf.value())
                .param("like", "%" + part.strip().replaceAll("([\\\\%_])", "\\\\$1") + "%")
                .param("most", most));
    }

    List<ShelfLine> of(SiteId site, ProductId product) {
        return lines(jdbc.sql(OF_PRODUCT).param("site", site.value()).param("product", product.value()));
    }

    /** All that operations may use, whatever the shelf. */
    List<ShelfLine> used(SiteId site) {
        return lines(jdbc.sql(USED).param("site", site.value()));
    }

    /** Where a lot lies, and the slots in which it may. */
    List<ShelfLine> of(SiteId site, LotId lot) {
        return lines(jdbc.sql(OF_LOT).param("site", site.value()).param("lot", lot.value()));
    }

    private List<ShelfLine> lines(JdbcClient.StatementSpec statement) {
        var products = new HashMap<UUID, Product>();
        var lines = statement
                .query((row, number) -> {
                    var product = StockRows.product(row, products);
                    @Nullable Lot lot = row.getObject("lot_id") == null ? null : StockRows.lot(row);
                    return new ShelfLine(
                            new ShelfId(row.getObject("shelf_id", UUID.class)),
                            product,
                            Optional.ofNullable(lot),
                            List.of(),
                            row.getInt("quantity"));
                })
                .list();
        return withPossible(lines);
    }

    private List<ShelfLine> withPossible(List<ShelfLine> lines) {
        var mixed = lines.stream()
                .filter(line -> line.lot().isEmpty())
                .map(line -> line.shelf().value())
                .collect(Collectors.toSet());
        if (mixed.isEmpty()) {
            return lines;
        }
        var slots = slots(mixed);
        return lines.stream()
                .map(line -> line.lot().isPresent()
                        ? line
                        : new ShelfLine(
                                line.shelf(),
                                line.product(),
                                line.lot(),
                                slots.getOrDefault(
                                        new Slot(line.shelf(), line.product().id()), List.of()),
                                line.quantity()))
                .toList();
    }

    private Map<Slot, List<Lot>> slots(Collection<UUID> shelves) {
        return jdbc
                .sql(SLOTS)
                .param("shelves", shelves.toArray(UUID[]::new))
                .query((row, number) -> Map.entry(
                        new Slot(
                                new ShelfId(row.getObject("shelf_id", UUID.class)),
                                new ProductId(row.getObject("product_id", UUID.class))),
                        StockRows.lot(row)))
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    }

    private record Slot(ShelfId shelf, ProductId product) {}
}
