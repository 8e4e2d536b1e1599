package org.espalier.stock;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Length;
import org.jspecify.annotations.Nullable;

/** Products, lots and shelves in words. */
public final class ProductText {

    private ProductText() {}

    /** Name and reference. */
    public static String of(Product product) {
        return Texts.text(
                "stock.product-name", product.data().name(), product.data().reference());
    }

    /** What a storekeeper tells one product from the next by; empty when nothing is known. */
    public static String size(ProductData data) {
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

    /** Name, reference, thickness and length: what is said of a piece in a child. */
    public static String inShort(Product product) {
        var data = product.data();
        return Stream.of(of(product), length("stock.diameter", data.diameter()), length("stock.length", data.length()))
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
    }

    /** The name of a shelf, else what it is for. */
    public static String of(Shelf shelf) {
        var name = shelf.name();
        return name == null ? Texts.of(shelf.kind()) : name;
    }

    /** What an operation needs. */
    public static String of(Need need) {
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

    /** The lot, or that it is one of several. */
    public static String lots(ShelfLine line) {
        return line.lot().map(Lot::number).orElseGet(() -> lots(line.possible()));
    }

    /** The lot, or that it is one of several. */
    public static String lots(List<Lot> lots) {
        var numbers = lots.stream().map(Lot::number).collect(Collectors.joining(", "));
        return switch (lots.size()) {
            case 0 -> Texts.text("stock.no-lot");
            case 1 -> numbers;
            default -> Texts.text("stock.one-of", numbers);
        };
    }

    private static @Nullable String length(String key, @Nullable Length length) {
        return length == null ? null : Texts.text(key, length.millimetres());
    }
}
