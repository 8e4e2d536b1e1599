package org.espalier.stock;

/** What a product is made of. */
public enum Material {
    TITANIUM,
    TITANIUM_ALLOY,
    STEEL,
    COBALT_CHROMIUM,
    POLYMER,
    OTHER
}
