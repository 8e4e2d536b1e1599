package org.espalier.stock;

/** What a shelf is for. */
public enum ShelfKind {
    STORE,
    /** A theatre tray: unsterile, the lots of a slot mixed, sterilised as a whole, one use a day. */
    TRAY,
    /** Goods that stay the supplier's until they are used. */
    CONSIGNMENT,
    QUARANTINE,
    /** The goods of one transfer, the sender's until they are received. */
    IN_TRANSIT,
    DISPOSED,
    /** Given to the family. */
    KEPT,
    ANALYSIS,
    SUPPLIER,
    /** In children. */
    CHILDREN,
    /** What a count found too much or too little. */
    DIFFERENCE;

    /** Whether an operation may take from it. */
    public boolean isUsable() {
        return this == STORE || this == TRAY || this == CONSIGNMENT;
    }

    /** Whether there is a stock on it; otherwise it is an end of the book. */
    public boolean isCounted() {
        return compareTo(SUPPLIER) < 0;
    }

    /** Whether a storekeeper may carry pieces from here to there. What was in a child never comes back to a shelf. */
    public boolean mayPassTo(ShelfKind to) {
        return switch (this) {
            case STORE, TRAY, CONSIGNMENT -> to.isUsable() || to == QUARANTINE || to == DISPOSED || to == SUPPLIER;
            case QUARANTINE -> to.isUsable() || to == ANALYSIS || to == DISPOSED || to == SUPPLIER;
            case ANALYSIS -> to == DISPOSED || to == KEPT;
            case SUPPLIER -> to.isUsable() || to == QUARANTINE;
            case IN_TRANSIT, DISPOSED, KEPT, CHILDREN, DIFFERENCE -> false;
        };
    }
}
