package org.espalier.interchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.science.quantity.Length;
import org.espalier.stock.Build;
import org.espalier.stock.Lot;
import org.espalier.stock.Magnet;
import org.espalier.stock.Material;
import org.espalier.stock.ProductData;
import org.espalier.stock.ProductKind;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfData;
import org.espalier.stock.ShelfKind;
import org.espalier.stock.ShelfLine;
import org.jspecify.annotations.Nullable;

/**
 * One line of a shelf, as the cells of a row say it.
 *
 * @param lots the lot, or those that are mixed, by number
 */
record StockCells(ShelfData shelf, ProductData product, List<SaidLot> lots, int pieces) {

    /** A lot as a row says it. */
    record SaidLot(String number, Optional<LocalDate> expires) {}

    private static final String BETWEEN = "; ";
    private static final int MOST_PIECES = 100_000;
    private static final double LONGEST_MM = 2000;
    private static final Map<String, ShelfKind> SHELVES = Words.all(
            Arrays.stream(ShelfKind.values()).filter(ShelfKind::isUsable).toList());
    private static final Map<String, ProductKind> PRODUCTS = Words.all(ProductKind.class);
    private static final Map<String, Build> BUILDS = Words.all(Build.class);
    private static final Map<String, Material> MATERIALS = Words.all(Material.class);
    private static final Map<String, Magnet> MAGNETS = Words.all(Magnet.class);

    StockCells {
        lots = List.copyOf(lots);
    }

    String key() {
        return shelf.name() + "/" + product.reference() + "/" + lotNumbers();
    }

    List<String> lotNumbers() {
        return lots.stream().map(SaidLot::number).toList();
    }

    static String name(Shelf shelf) {
        return Words.text(shelf.name());
    }

    static Optional<StockCells> read(ClinicRow row) {
        var cells = row.cells();
        var shelf = cells.name("shelf");
        var shelfKind = cells.oneOf("shelf_kind", SHELVES);
        var reference = cells.name("reference");
        var kind = cells.oneOf("product_kind", PRODUCTS);
        var name = cells.name("product");
        var magnet = cells.oneOf("magnet", MAGNETS);
        var traced = cells.oneOf("traced", Words.YES_NO);
        var sterile = cells.oneOf("sterile", Words.YES_NO);
        var pieces = cells.number("pieces", 1, MOST_PIECES);
        var lots = lots(row);
        if (Arrays.asList(shelf, shelfKind, reference, kind, name, magnet, traced, sterile, pieces, lots).stream()
                .anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        if (lots.get().size() > pieces.get()) {
            throw new RowRefused("pieces", FileReason.LOTS_MORE_THAN_PIECES);
        }
        var product = new ProductData(
                kind.get(),
                name.get(),
                reference.get(),
                length(row, "diameter_mm"),
                length(row, "core_mm"),
                length(row, "length_mm"),
                optional(row, "build", BUILDS),
                optional(row, "material", MATERIALS),
                row.textOrNull("driver"),
                magnet.get(),
                traced.get(),
                sterile.get());
        var where = new ShelfData(shelfKind.get(), shelf.get(), row.textOrNull("owner"), day(row, "back_by"));
        return Optional.of(
                new StockCells(where, product, lots.get(), pieces.get().intValue()));
    }

    /** The lots and their last days of use, in the same order; {@code -} where there is none. */
    private static Optional<List<SaidLot>> lots(ClinicRow row) {
        if (row.cells().isEmpty("lot")) {
            return Optional.of(List.of());
        }
        var numbers = row.text("lot").split(BETWEEN.strip());
        var days = row.cells().isEmpty("expires")
                ? new String[0]
                : row.text("expires").split(BETWEEN.strip());
        if (days.length != 0 && days.length != numbers.length) {
            row.cells().refuse("expires", FileReason.DAYS_NOT_AS_LOTS, numbers.length, days.length);
            return Optional.empty();
        }
        List<SaidLot> lots = new ArrayList<>();
        for (int i = 0; i < numbers.length; i++) {
            var day = days.length == 0 ? "none" : days[i].strip();
            try {
                lots.add(new SaidLot(
                        numbers[i].strip(), day.equals("none") ? Optional.empty() : Optional.of(LocalDate.parse(day))));
            } catch (DateTimeException e) {
                row.cells().refuse("expires", FileReason.NOT_A_DATE_OR_NONE, day);
                return Optional.empty();
            }
        }
        return Optional.of(lots);
    }

    private static @Nullable Length length(ClinicRow row, String column) {
        return row.cells().isEmpty(column)
                ? null
                : row.cells()
                        .number(column, 0, LONGEST_MM)
                        .map(Length::ofMillimetres)
                        .orElse(null);
    }

    private static <T> @Nullable T optional(ClinicRow row, String column, Map<String, T> values) {
        return row.cells().isEmpty(column)
                ? null
                : row.cells().oneOf(column, values).orElse(null);
    }

    private static @Nullable LocalDate day(ClinicRow row, String column) {
        return row.cells().isEmpty(column) ? null : row.cells().date(column).orElse(null);
    }

    /** The row of a line. */
    static List<String> row(Shelf shelf, ShelfLine line, List<Lot> lots) {
        var data = line.product().data();
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("shelf", name(shelf));
        cells.put("shelf_kind", Words.of(shelf.kind()));
        cells.put("owner", Words.text(shelf.owner()));
        cells.put("back_by", Words.text(shelf.backBy()));
        cells.put("reference", data.reference());
        cells.put("product_kind", Words.of(data.kind()));
        cells.put("product", data.name());
        cells.put("diameter_mm", millimetres(data.diameter()));
        cells.put("core_mm", millimetres(data.core()));
        cells.put("length_mm", millimetres(data.length()));
        cells.put("build", Words.of(data.build()));
        cells.put("material", Words.of(data.material()));
        cells.put("driver", Words.text(data.driver()));
        cells.put("magnet", Words.of(data.magnet()));
        cells.put("traced", Words.of(data.traced()));
        cells.put("sterile", Words.of(data.sterile()));
        cells.put("lot", lots.stream().map(Lot::number).collect(Collectors.joining(BETWEEN)));
        cells.put("expires", lots.stream().map(StockCells::expires).collect(Collectors.joining(BETWEEN)));
        cells.put("pieces", Integer.toString(line.quantity()));
        return Giving.row(cells, ClinicFile.STOCK);
    }

    private static String expires(Lot lot) {
        return lot.expires() == null
                ? "none"
                : Objects.requireNonNull(lot.expires()).toString();
    }

    private static String millimetres(@Nullable Length length) {
        return length == null ? "" : Words.of(length.millimetres(), 2);
    }
}
