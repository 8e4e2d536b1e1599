package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.espalier.science.quantity.Side;
import org.espalier.stock.UnitCost;
import org.jspecify.annotations.Nullable;

/**
 * So many of an item, as a rule reads them from a fact, before any price.
 *
 * @param side the limb it was for; null when it was for all that are followed
 * @param on the day, or the first of several
 * @param cost what a piece cost by its lot; empty when the tariff says
 * @param movement the movement of the stock that took it
 */
record Claim(
        ChargeSource source,
        UUID fact,
        ChargeRule rule,
        TariffItem item,
        @Nullable Side side,
        LocalDate on,
        BigDecimal quantity,
        Optional<UnitCost> cost,
        Optional<UUID> movement) {

    Claim {
        if (quantity.signum() <= 0) {
            throw new IllegalArgumentException("nothing is claimed: " + quantity);
        }
    }

    static Claim of(
            ChargeSource source,
            UUID fact,
            ChargeRule rule,
            TariffItem item,
            @Nullable Side side,
            LocalDate on,
            BigDecimal quantity) {
        return new Claim(source, fact, rule, item, side, on, quantity, Optional.empty(), Optional.empty());
    }

    static Claim one(ChargeSource source, UUID fact, ChargeRule rule, TariffItem item, LocalDate on) {
        return of(source, fact, rule, item, null, on, BigDecimal.ONE);
    }
}
