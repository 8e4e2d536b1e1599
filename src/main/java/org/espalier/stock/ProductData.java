package org.espalier.stock;

import org.espalier.science.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What the catalogue says of a product.
 *
 * @param reference the maker's own number, which no two products of the network share
 * @param diameter over the thread; null where there is none or it is not known
 * @param core between the threads
 * @param driver what turns it; of an instrument, what it turns
 * @param traced whether each piece that comes in has a lot
 * @param sterile whether it comes sterile
 */
public record ProductData(
        ProductKind kind,
        String name,
        String reference,
        @Nullable Length diameter,
        @Nullable Length core,
        @Nullable Length length,
        @Nullable Build build,
        @Nullable Material material,
        @Nullable String driver,
        Magnet magnet,
        boolean traced,
        boolean sterile) {

    public ProductData {
        name = name.strip();
        reference = reference.strip();
        if (name.length() < 2 || reference.isEmpty()) {
            throw new IllegalArgumentException("a product has a name and a reference: " + name + ", " + reference);
        }
        if (core != null && diameter != null && core.compareTo(diameter) > 0) {
            throw new IllegalArgumentException("a core is no thicker than its thread: " + core + ", " + diameter);
        }
    }

    /**
     * A product of which nothing more is known than its kind, name and reference; traced when it may stay in a child.
     */
    public static ProductData of(ProductKind kind, String name, String reference) {
        return new ProductData(
                kind, name, reference, null, null, null, null, null, null, Magnet.NOT_KNOWN, kind.isImplant(), false);
    }
}
