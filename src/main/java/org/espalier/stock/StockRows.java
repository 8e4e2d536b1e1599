package org.espalier.stock;

import java.math.BigDecimal;
import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.science.quantity.Length;
import org.jspecify.annotations.Nullable;

/** Rows of the stock's tables as the types of the house. */
final class StockRows {

    static final String PRODUCT = """
            p.id as product_id, p.version as product_version, p.kind as product_kind, p.name as product_name,
            p.reference, p.diameter_mm, p.core_mm, p.length_mm, p.build, p.material, p.driver,
            p.magnet, p.traced, p.sterile
            """;

    private StockRows() {}

    static Product product(ResultSet row) throws SQLException {
        var data = new ProductData(
                ProductKind.valueOf(row.getString("product_kind")),
                row.getString("product_name"),
                row.getString("reference"),
                length(row.getBigDecimal("diameter_mm")),
                length(row.getBigDecimal("core_mm")),
                length(row.getBigDecimal("length_mm")),
                constant(Build.class, row.getString("build")),
                constant(Material.class, row.getString("material")),
                row.getString("driver"),
                Magnet.valueOf(row.getString("magnet")),
                row.getBoolean("traced"),
                row.getBoolean("sterile"));
        return new Product(new ProductId(row.getObject("product_id", UUID.class)), row.getInt("product_version"), data);
    }

    /** The product of a row; one of many rows is made once. */
    static Product product(ResultSet row, Map<UUID, Product> known) throws SQLException {
        var id = row.getObject("product_id", UUID.class);
        var product = known.get(id);
        if (product == null) {
            product = product(row);
            known.put(id, product);
        }
        return product;
    }

    /** A shelf whose columns stand under a prefix. */
    static Shelf shelf(ResultSet row, String prefix) throws SQLException {
        var toSite = row.getObject(prefix + "to_site", UUID.class);
        return new Shelf(
                new ShelfId(row.getObject(prefix + "id", UUID.class)),
                new SiteId(row.getObject(prefix + "site", UUID.class)),
                ShelfKind.valueOf(row.getString(prefix + "kind")),
                row.getString(prefix + "name"),
                row.getInt(prefix + "version"),
                toSite == null ? null : new SiteId(toSite),
                row.getString(prefix + "owner"),
                row.getObject(prefix + "back_by", LocalDate.class),
                row.getBoolean(prefix + "sterilising"),
                row.getObject(prefix + "used_on", LocalDate.class),
                row.getObject(prefix + "closed_on", LocalDate.class));
    }

    /** The columns of a shelf under a prefix. */
    static String shelf(String table, String prefix) {
        return """
                T.id as P_id, T.site_id as P_site, T.kind as P_kind, T.name as P_name, T.version as P_version,
                T.to_site as P_to_site, T.owner_name as P_owner, T.back_by as P_back_by, T.sterilising as P_sterilising,
                T.used_on as P_used_on, T.closed_on as P_closed_on
                """.replace("T.", table + ".").replace("P_", prefix);
    }

    static Lot lot(ResultSet row) throws SQLException {
        return new Lot(
                new LotId(row.getObject("lot_id", UUID.class)),
                new ProductId(row.getObject("product_id", UUID.class)),
                row.getString("lot_number"),
                row.getObject("expires_on", LocalDate.class),
                row.getBoolean("held"));
    }

    static @Nullable UnitCost cost(ResultSet row) throws SQLException {
        var amount = row.getBigDecimal("unit_cost");
        return amount == null ? null : new UnitCost(amount, Currency.getInstance(row.getString("currency")));
    }

    static List<LotId> lots(@Nullable Array ids) throws SQLException {
        return ids == null
                ? List.of()
                : Arrays.stream((UUID[]) ids.getArray()).map(LotId::new).toList();
    }

    static UUID[] ids(Collection<LotId> lots) {
        return lots.stream().map(LotId::value).toArray(UUID[]::new);
    }

    static @Nullable BigDecimal millimetres(@Nullable Length length) {
        return length == null ? null : BigDecimal.valueOf(length.millimetres());
    }

    private static @Nullable Length length(@Nullable BigDecimal millimetres) {
        return millimetres == null ? null : Length.ofMillimetres(millimetres.doubleValue());
    }

    private static <E extends Enum<E>> @Nullable E constant(Class<E> type, @Nullable String name) {
        return name == null ? null : Enum.valueOf(type, name);
    }
}
