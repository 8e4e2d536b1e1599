package org.espalier.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.StaffId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The catalogue. */
@Repository
class JdbcProductRepository {

    private static final String SELECT = "select " + StockRows.PRODUCT + " from stock_product p ";
    private static final String FIND = SELECT + "where p.id = :id";
    private static final String SEARCH = SELECT + """
            where (cast(:kind as text) is null or p.kind = :kind)
                and (p.name ilike :like or p.reference ilike :like or exists (
                    select from stock_product_code c where c.product_id = p.id and c.code like :like))
            order by p.kind, p.name, p.diameter_mm, p.length_mm, p.reference limit :limit
            """;
    private static final String BY_CODE = SELECT + """
            join stock_product_code c on c.product_id = p.id where c.scheme = :scheme and c.code = :code
            """;
    private static final String ADD = """
            insert into stock_product (id, kind, name, reference, diameter_mm, core_mm, length_mm, build, material,
                driver,
                magnet, traced, sterile, changed_by, changed_at)
            values (:id, :kind, :name, :reference, :diameter, :core, :length, :build, :material, :driver, :magnet,
                :traced,
                :sterile, :by, :at)
            """;
    private static final String CHANGE = """
            update stock_product set version = version + 1, kind = :kind, name = :name, reference = :reference,
                diameter_mm = :diameter, core_mm = :core, length_mm = :length, build = :build, material = :material,
                driver = :driver, magnet = :magnet, traced = :traced, sterile = :sterile, changed_by = :by, changed_at =
                    :at
            where id = :id and version = :version
            """;
    private static final String CODES =
            "select scheme, code from stock_product_code where product_id = :id order by scheme, code";
    private static final String ADD_CODE = """
            insert into stock_product_code (scheme, code, product_id) values (:scheme, :code, :id) on conflict do
                nothing
            """;
    private static final String REMOVE_CODE =
            "delete from stock_product_code where scheme = :scheme and code = :code and product_id = :id";

    private final JdbcClient jdbc;

    JdbcProductRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Product> find(ProductId id) {
        return jdbc.sql(FIND)
                .param("id", id.value())
                .query(JdbcProductRepository::row)
                .optional();
    }

    List<Product> search(String text, Optional<ProductKind> kind, int limit) {
        return jdbc.sql(SEARCH)
                .param("like", "%" + text.strip().replaceAll("([\\\\%_])", "\\\\$1") + "%")
                .param("kind", kind.map(Enum::name).orElse(null))
                .param("limit", limit)
                .query(JdbcProductRepository::row)
                .list();
    }

    Optional<Product> find(ProductCode code) {
        return jdbc.sql(BY_CODE)
                .param("scheme", code.scheme().name())
                .param("code", code.code())
                .query(JdbcProductRepository::row)
                .optional();
    }

    void add(ProductId id, ProductData data, @Nullable StaffId by, Instant at) {
        filled(ADD, id, data, by, at).update();
    }

    boolean change(Product old, ProductData data, StaffId by, Instant at) {
        return filled(CHANGE, old.id(), data, by, at)
                        .param("version", old.version())
                        .update()
                == 1;
    }

    private JdbcClient.StatementSpec filled(
            String sql, ProductId id, ProductData data, @Nullable StaffId by, Instant at) {
        return jdbc.sql(sql)
                .param("id", id.value())
                .param("kind", data.kind().name())
                .param("name", data.name())
                .param("reference", data.reference())
                .param("diameter", StockRows.millimetres(data.diameter()))
                .param("core", StockRows.millimetres(data.core()))
                .param("length", StockRows.millimetres(data.length()))
                .param("build", data.build() == null ? null : data.build().name())
                .param(
                        "material",
                        data.material() == null ? null : data.material().name())
                .param("driver", data.driver())
                .param("magnet", data.magnet().name())
                .param("traced", data.traced())
                .param("sterile", data.sterile())
                .param("by", by == null ? null : by.value())
                .param("at", at.atOffset(ZoneOffset.UTC));
    }

    List<ProductCode> codes(ProductId id) {
        return jdbc.sql(CODES)
                .param("id", id.value())
                .query((row, number) ->
                        new ProductCode(ProductCode.Scheme.valueOf(row.getString("scheme")), row.getString("code")))
                .list();
    }

    void addCode(ProductId id, ProductCode code) {
        ofCode(ADD_CODE, id.value(), code);
    }

    void removeCode(ProductId id, ProductCode code) {
        ofCode(REMOVE_CODE, id.value(), code);
    }

    private void ofCode(String sql, UUID id, ProductCode code) {
        jdbc.sql(sql)
                .param("id", id)
                .param("scheme", code.scheme().name())
                .param("code", code.code())
                .update();
    }

    private static Product row(ResultSet row, int number) throws SQLException {
        return StockRows.product(row);
    }
}
