package org.espalier.stock;

import java.util.List;
import org.espalier.access.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Compares what is kept beside the movements with what follows from them, and makes it anew. */
@Repository
class JdbcStockCheckRepository {

    private static final String DIFFERENCES = """
            select coalesce(b.shelf_id, m.shelf_id) || ' ' || coalesce(b.product_id, m.product_id) || ' ' ||
                coalesce(b.slot, m.slot)
                || ' kept ' || coalesce(b.quantity, 0) || ', moved ' || coalesce(m.quantity, 0)
            from (select * from stock_balance where site_id = :site) b
            full join (
                select shelf_id, product_id, coalesce(lot_id, '00000000-0000-0000-0000-000000000000') as slot, quantity
                from stock_by_movements(:site)
            ) m on m.shelf_id = b.shelf_id and m.product_id = b.product_id and m.slot = b.slot
            where coalesce(b.quantity, 0) <> coalesce(m.quantity, 0)
            union all
            select coalesce(s.shelf_id, m.shelf_id) || ' ' || coalesce(s.product_id, m.product_id) || ' may be of '
                || coalesce(s.lot_id, m.lot_id) || case when s.lot_id is null then ', not kept' else ', not moved' end
            from (select * from stock_slot_lot where site_id = :site) s
            full join stock_slots_by_movements(:site) m
                on m.shelf_id = s.shelf_id and m.product_id = s.product_id and m.lot_id = s.lot_id
            where s.lot_id is null or m.lot_id is null
            """;
    private static final String REBUILD = "select rebuild_stock(:site)";

    private final JdbcClient jdbc;

    JdbcStockCheckRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<String> differences(SiteId site) {
        return jdbc.sql(DIFFERENCES)
                .param("site", site.value())
                .query(String.class)
                .list();
    }

    void rebuild(SiteId site) {
        jdbc.sql(REBUILD)
                .param("site", site.value())
                .query((row, number) -> true)
                .list();
    }
}
