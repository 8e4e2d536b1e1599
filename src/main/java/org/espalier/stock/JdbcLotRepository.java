package org.espalier.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.espalier.access.StaffId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Lots of the catalogue's products. */
@Repository
class JdbcLotRepository {

    private static final String SELECT = """
            select l.id as lot_id, l.product_id, l.number as lot_number, l.expires_on, l.held_since is not null as held
            from stock_lot l
            """;
    private static final String BY_IDS = SELECT + "where l.id = any(cast(:ids as uuid[]))";
    private static final String BY_NUMBER = SELECT + "where l.product_id = :product and l.number = :number";
    private static final String OF_PRODUCT =
            SELECT + "where l.product_id = :product order by l.expires_on, l.number limit 500";
    private static final String SEARCH =
            SELECT + "where lower(l.number) like :like order by l.number, l.id limit :limit";
    private static final String ADD = """
            insert into stock_lot (id, product_id, number, expires_on, recorded_by, recorded_at)
            values (:id, :product, :number, :expires, :by, :at) on conflict (product_id, number) do nothing
            """;

    private final JdbcClient jdbc;

    JdbcLotRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Lot> find(LotId id) {
        return Optional.ofNullable(find(List.of(id)).get(id));
    }

    Map<LotId, Lot> find(Collection<LotId> ids) {
        return ids.isEmpty()
                ? Map.of()
                : jdbc.sql(BY_IDS).param("ids", StockRows.ids(ids)).query(JdbcLotRepository::row).list().stream()
                        .collect(Collectors.toMap(Lot::id, Function.identity()));
    }

    Optional<Lot> find(ProductId product, String number) {
        return jdbc.sql(BY_NUMBER)
                .param("product", product.value())
                .param("number", number)
                .query(JdbcLotRepository::row)
                .optional();
    }

    List<Lot> of(ProductId product) {
        return jdbc.sql(OF_PRODUCT)
                .param("product", product.value())
                .query(JdbcLotRepository::row)
                .list();
    }

    /** Lots whose number begins so, of any product. */
    List<Lot> search(String begins, int limit) {
        return jdbc.sql(SEARCH)
                .param("like", begins.strip().toLowerCase(Locale.ROOT).replaceAll("([\\\\%_])", "\\\\$1") + "%")
                .param("limit", limit)
                .query(JdbcLotRepository::row)
                .list();
    }

    /** Adds the lot unless it is there already. */
    void add(UUID id, ProductId product, String number, @Nullable LocalDate expires, @Nullable StaffId by, Instant at) {
        jdbc.sql(ADD)
                .param("id", id)
                .param("product", product.value())
                .param("number", number)
                .param("expires", expires)
                .param("by", by == null ? null : by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    private static Lot row(ResultSet row, int number) throws SQLException {
        return StockRows.lot(row);
    }
}
