package org.espalier.stock;

/** What a product is. */
public enum ProductKind {
    PLATE,
    SCREW,
    WIRE,
    STAPLE,
    FRAME,
    CONSUMABLE,
    INSTRUMENT,
    /** A whole set of instruments or implants that is kept, lent and counted as one. */
    TRAY,
    /** What gets a broken or worn screw out. */
    RESCUE_SET;

    /** Whether it may stay in a child. */
    public boolean isImplant() {
        return compareTo(FRAME) <= 0;
    }

    /** Whether an operation may leave it in a child or use it up. */
    public boolean isUsed() {
        return compareTo(CONSUMABLE) <= 0;
    }
}
