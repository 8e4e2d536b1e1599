package org.espalier.stock;

/** What the maker says of the product in a magnetic resonance scanner. */
public enum Magnet {
    NOT_KNOWN,
    SAFE,
    CONDITIONAL,
    UNSAFE
}
