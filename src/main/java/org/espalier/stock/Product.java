package org.espalier.stock;

/**
 * Something that lies on shelves.
 *
 * @param version counts the changes of what is said of it
 */
public record Product(ProductId id, int version, ProductData data) {}
