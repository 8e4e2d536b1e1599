package org.espalier.stock.ui;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.stock.Lot;
import org.espalier.stock.Need;
import org.espalier.stock.Product;
import org.espalier.stock.ProductData;
import org.espalier.stock.ProductText;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfLine;
import org.espalier.stock.UnitCost;

/** Shelves, products and lots in words. */
final class StockText {

    private StockText() {}

    static String of(Shelf shelf) {
        return ProductText.of(shelf);
    }

    static String of(Product product) {
        return ProductText.of(product);
    }

    /** What a storekeeper tells one product from the next by; empty when nothing is known. */
    static String size(ProductData data) {
        return ProductText.size(data);
    }

    /** What it is, in one line. */
    static String what(ProductData data) {
        return Stream.of(Texts.of(data.kind()), size(data), Texts.of(data.magnet()))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    static String lots(ShelfLine line) {
        return ProductText.lots(line);
    }

    static String lots(List<Lot> lots) {
        return ProductText.lots(lots);
    }

    static String expiry(ShelfLine line) {
        return Stream.concat(line.lot().stream(), line.possible().stream())
                .map(Lot::expires)
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder())
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
        return ProductText.of(need);
    }

    /** The short name of an operation that means nothing outside. */
    static String operation(UUID holder) {
        var text = holder.toString();
        return text.substring(text.length() - 6);
    }
}
