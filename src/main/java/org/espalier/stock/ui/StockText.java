package org.espalier.stock.ui;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Length;
import org.espalier.stock.Lot;
import org.espalier.stock.Need;
import org.espalier.stock.Product;
import org.espalier.stock.ProductData;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfLine;
import org.espalier.stock.UnitCost;
import org.jspecify.annotations.Nullable;

/** Shelves, products and lots in words. */
final class StockText {

    private StockText() {}

    static String of(Shelf shelf) {
        var name = shelf.name();
        return name == null ? Texts.of(shelf.kind()) : name;
    }

    static String of(Product product) {
        return Texts.text(
                "stock.product-name", product.data().name(), product.data().reference());
    }

    /** What a storekeeper tells one product from the next by; empty when nothing is known. */
    static String size(ProductData data) {
        return Stream.of(
                        length("stock.diameter", data.diameter()),
                        length("stock.core", data.core()),
                        length("stock.length", data.length()),
                        data.build() == null ? null : Texts.of(data.build()),
                        data.material() == null ? null : Texts.of(data.material()),
                        data.driver() == null ? null : Texts.text("stock.driver", data.driver()))
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
    }

    /** What it is, in one line. */
    static String what(ProductData data) {
        return Stream.of(Texts.of(data.kind()), size(data), Texts.of(data.magnet()))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    private static @Nullable String length(String key, @Nullable Length length) {
        return length == null ? null : Texts.text(key, length.millimetres());
    }

    static String lots(ShelfLine line) {
        return line.lot().map(Lot::number).orElseGet(() -> lots(line.possible()));
    }

    static String lots(List<Lot> lots) {
        var numbers = lots.stream().map(Lot::number).collect(Collectors.joining(", "));
        return switch (lots.size()) {
            case 0 -> Texts.text("stock.no-lot");
            case 1 -> numbers;
            default -> Texts.text("stock.one-of", numbers);
        };
    }

    static String expiry(ShelfLine line) {
        return Stream.concat(line.lot().stream(), line.possible().stream())
                .map(Lot::expires)
                .filter(Objects::nonNull)
                .min(java.util.Comparator.naturalOrder())
                .map(DateText::of)
                .orElse("");
    }

    static String of(UnitCost cost) {
        return Texts.text("stock.money", cost.currency().getCurrencyCode(), cost.amount());
    }

    static String at(Instant instant, ZoneId zone) {
        var local = instant.atZone(zone);
        return DateText.of(local.toLocalDate()) + String.format(" %02d:%02d", local.getHour(), local.getMinute());
    }

    static String of(Need need) {
        return Stream.of(
                        Texts.of(need.kind()),
                        length("stock.diameter", need.diameter()),
                        range(need),
                        need.driver() == null ? null : Texts.text("stock.driver", need.driver()))
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
    }

    private static @Nullable String range(Need need) {
        var shortest = need.shortest();
        var longest = need.longest();
        return shortest == null || longest == null
                ? null
                : Texts.text("stock.range", shortest.millimetres(), longest.millimetres());
    }

    /** The short name of an operation that means nothing outside. */
    static String operation(UUID holder) {
        var text = holder.toString();
        return text.substring(text.length() - 6);
    }
}
