package org.espalier.stock;

/** How much lies on a shelf. */
public record ShelfSummary(Shelf shelf, int products, int pieces) {}
