package org.espalier.stock;

import org.espalier.science.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What an operation needs: one product, or any pieces of a kind within a range.
 *
 * @param product null for any of the kind
 * @param diameter null for any
 * @param shortest the shortest that will do; null, with the longest, for any
 * @param driver what it must turn, or be turned by; null for any
 */
public record Need(
        ProductKind kind,
        @Nullable ProductId product,
        @Nullable Length diameter,
        @Nullable Length shortest,
        @Nullable Length longest,
        @Nullable String driver,
        int quantity) {

    public Need {
        if (quantity < 1 || (shortest == null) != (longest == null)) {
            throw new IllegalArgumentException("a number of pieces and a whole range: " + quantity + " " + shortest);
        }
        if (shortest != null && longest != null && shortest.compareTo(longest) > 0) {
            throw new IllegalArgumentException(
                    "the shortest is no longer than the longest: " + shortest + ", " + longest);
        }
    }

    /** So many of one product. */
    public static Need of(Product product, int quantity) {
        return new Need(product.data().kind(), product.id(), null, null, null, null, quantity);
    }

    /** Whether the product will do. */
    public boolean isMetBy(Product candidate) {
        var data = candidate.data();
        return candidate.id().equals(product)
                || product == null
                        && data.kind() == kind
                        && (diameter == null || diameter.equals(data.diameter()))
                        && (driver == null || driver.equalsIgnoreCase(data.driver()))
                        && isWithin(data.length());
    }

    private boolean isWithin(@Nullable Length length) {
        return shortest == null
                || longest == null
                || length != null && length.compareTo(shortest) >= 0 && length.compareTo(longest) <= 0;
    }
}
