package org.espalier.stock;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the database answered to a movement. */
record MoveOutcome(
        String outcome,
        int available,
        List<LotId> lots,
        @Nullable LocalDate expires) {

    /** Throws when the movement was refused. */
    MoveOutcome orRefuse() {
        return switch (outcome) {
            case "MOVED", "REPEATED" -> this;
            case "SHORT" -> throw new StockRefusal(StockRefusal.Reason.SHORT, available);
            case "OTHER" -> throw new StockRefusal(StockRefusal.Reason.OTHER_MOVEMENT);
            default -> throw new StockRefusal(StockRefusal.Reason.valueOf(outcome));
        };
    }
}
