package org.espalier.stock;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Count sheets. */
@Repository
class JdbcCountRepository {

    private static final String OPEN = """
            insert into stock_count (id, site_id, shelf_id, opened_by, opened_at) values (:id, :site, :shelf, :by, :at)
            on conflict (shelf_id) where closed_at is null do nothing
            """;
    private static final String SELECT = """
            select c.id, c.shelf_id, s.name as opened_by, c.opened_at, c.closed_at from stock_count c join staff s on
                s.id = c.opened_by
            """;
    private static final String OPEN_OF = SELECT + "where c.shelf_id = :shelf and c.closed_at is null";
    private static final String ONE = SELECT + "where c.id = :id";
    private static final String CLOSED_OF =
            SELECT + "where c.shelf_id = :shelf and c.closed_at is not null order by c.opened_at desc limit 5";
    private static final String LINES = "select l.lot_id, l.expected, l.counted, t.number as lot_number, t.expires_on, "
            + "t.held_since is not null as held, " + StockRows.PRODUCT + """
            from stock_count_line l join stock_product p on p.id = l.product_id left join stock_lot t on t.id = l.lot_id
            where l.count_id = :id order by p.kind, p.name, p.length_mm, t.number
            """;
    private static final String COUNT = """
            insert into stock_count_line (count_id, site_id, product_id, lot_id, expected, counted, counted_by,
                counted_at)
            select c.id, c.site_id, :product, cast(:lot as uuid), coalesce((
                select quantity from stock_balance b where b.shelf_id = c.shelf_id and b.product_id = :product
                    and b.slot = coalesce(cast(:lot as uuid), '00000000-0000-0000-0000-000000000000')), 0), :counted,
                        :by, :at
            from stock_count c where c.id = :id and c.closed_at is null
            on conflict (count_id, product_id, slot) do update
            set expected = excluded.expected, counted = excluded.counted, counted_by = excluded.counted_by,
                counted_at = excluded.counted_at
            """;
    private static final String CLOSE =
            "update stock_count set closed_by = :by, closed_at = :at where id = :id and closed_at is null";

    private final JdbcClient jdbc;

    JdbcCountRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Opens a sheet, unless one of the shelf is open. */
    void open(UUID id, SiteId site, ShelfId shelf, StaffId by, Instant at) {
        jdbc.sql(OPEN)
                .param("id", id)
                .param("site", site.value())
                .param("shelf", shelf.value())
                .param("by", by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    Optional<CountSheet> openOf(ShelfId shelf) {
        return sheets(jdbc.sql(OPEN_OF).param("shelf", shelf.value())).stream().findFirst();
    }

    Optional<CountSheet> find(UUID id) {
        return sheets(jdbc.sql(ONE).param("id", id)).stream().findFirst();
    }

    /** The last five that were closed, the latest first. */
    List<CountSheet> closedOf(ShelfId shelf) {
        return sheets(jdbc.sql(CLOSED_OF).param("shelf", shelf.value()));
    }

    boolean count(UUID id, ProductId product, Optional<LotId> lot, int counted, StaffId by, Instant at) {
        return jdbc.sql(COUNT)
                        .param("id", id)
                        .param("product", product.value())
                        .param("lot", lot.map(LotId::value).orElse(null))
                        .param("counted", counted)
                        .param("by", by.value())
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    boolean close(UUID id, StaffId by, Instant at) {
        return jdbc.sql(CLOSE)
                        .param("id", id)
                        .param("by", by.value())
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    private List<CountSheet> sheets(JdbcClient.StatementSpec statement) {
        return statement
                .query((row, number) -> new CountSheet(
                        row.getObject("id", UUID.class),
                        new ShelfId(row.getObject("shelf_id", UUID.class)),
                        row.getString("opened_by"),
                        row.getObject("opened_at", OffsetDateTime.class).toInstant(),
                        Optional.ofNullable(row.getObject("closed_at", OffsetDateTime.class))
                                .map(OffsetDateTime::toInstant),
                        List.of()))
                .list()
                .stream()
                .map(sheet -> new CountSheet(
                        sheet.id(),
                        sheet.shelf(),
                        sheet.openedBy(),
                        sheet.openedAt(),
                        sheet.closedAt(),
                        lines(sheet.id())))
                .toList();
    }

    private List<CountSheet.Line> lines(UUID id) {
        return jdbc.sql(LINES)
                .param("id", id)
                .query((row, number) -> new CountSheet.Line(
                        StockRows.product(row),
                        row.getObject("lot_id") == null ? Optional.empty() : Optional.of(StockRows.lot(row)),
                        row.getInt("expected"),
                        row.getInt("counted")))
                .list();
    }
}
