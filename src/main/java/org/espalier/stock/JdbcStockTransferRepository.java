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

/** Goods on their way, with both signatures. */
@Repository
class JdbcStockTransferRepository {

    private static final String SEND = """
            insert into stock_transfer (shelf_id, from_site, to_site, sent_by, sent_at) values (:shelf, :from, :to, :by,
                :at)
            """;
    private static final String SIGN = """
            update stock_transfer set received_by = :by, received_at = :at
            where shelf_id = :shelf and received_at is null and sent_by <> :by
            """;
    private static final String SELECT = """
            select t.shelf_id, t.from_site, t.to_site, s.name as sent_by, t.sent_at, r.name as received_by,
                t.received_at, coalesce((
                select sum(quantity) from stock_balance b where b.shelf_id = t.shelf_id), 0) as pieces
            from stock_transfer t join staff s on s.id = t.sent_by left join staff r on r.id = t.received_by
            """;
    private static final String OF_SITE = SELECT + """
            where t.from_site = :site or t.to_site = :site
            order by t.received_at is not null, t.sent_at desc limit 30
            """;
    private static final String ONE = SELECT + "where t.shelf_id = :shelf";

    private final JdbcClient jdbc;

    JdbcStockTransferRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void send(ShelfId shelf, SiteId from, SiteId to, StaffId by, Instant at) {
        jdbc.sql(SEND)
                .param("shelf", shelf.value())
                .param("from", from.value())
                .param("to", to.value())
                .param("by", by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** Signs at the other end; not by who sent them, and once. */
    boolean sign(ShelfId shelf, StaffId by, Instant at) {
        return jdbc.sql(SIGN)
                        .param("shelf", shelf.value())
                        .param("by", by.value())
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    /** To and from a hospital, those not signed for first. */
    List<StockTransfer> of(SiteId site) {
        return transfers(jdbc.sql(OF_SITE).param("site", site.value()));
    }

    Optional<StockTransfer> find(ShelfId shelf) {
        return transfers(jdbc.sql(ONE).param("shelf", shelf.value())).stream().findFirst();
    }

    private static List<StockTransfer> transfers(JdbcClient.StatementSpec statement) {
        return statement
                .query((row, number) -> new StockTransfer(
                        new ShelfId(row.getObject("shelf_id", UUID.class)),
                        new SiteId(row.getObject("from_site", UUID.class)),
                        new SiteId(row.getObject("to_site", UUID.class)),
                        row.getString("sent_by"),
                        row.getObject("sent_at", OffsetDateTime.class).toInstant(),
                        Optional.ofNullable(row.getString("received_by")),
                        Optional.ofNullable(row.getObject("received_at", OffsetDateTime.class))
                                .map(OffsetDateTime::toInstant),
                        row.getInt("pieces")))
                .list();
    }
}
