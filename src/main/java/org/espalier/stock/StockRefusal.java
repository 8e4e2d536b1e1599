package org.espalier.stock;

import org.espalier.kit.Texts;

/** A movement that cannot be; nothing was changed. */
public final class StockRefusal extends RuntimeException {

    private static final long serialVersionUID = 1;

    /** Why not. */
    public enum Reason {
        NOT_THERE,
        CLOSED,
        SHORT,
        NOT_OF_THIS_LOT,
        HELD,
        LOT_WANTED,
        NO_LOTS_KEPT,
        EXPIRY_DIFFERS,
        OTHER_MOVEMENT,
        NOT_FROM_THERE,
        TRAY_USED_TODAY,
        TAKEN_BACK_BEFORE,
        CHANGED_MEANWHILE,
        TAKEN_REFERENCE,
        TAKEN_NAME,
        SIGNED_BY_SENDER,
        NOT_EMPTY
    }

    private final Reason reason;
    private final int available;

    StockRefusal(Reason reason) {
        this(reason, 0);
    }

    StockRefusal(Reason reason, int available) {
        super(reason + ", available " + available);
        this.reason = reason;
        this.available = available;
    }

    public Reason reason() {
        return reason;
    }

    /** How many pieces there are where too many were asked for. */
    public int available() {
        return available;
    }

    /** What happened and what to do, in the reader's words. */
    public String text() {
        return reason == Reason.SHORT ? Texts.text("stock.refusal.short", available) : Texts.of(reason);
    }
}
