package org.espalier.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * What a charge says.
 *
 * @param fact the id of the fact it follows from
 * @param side the limb it was for; null when it was for all that are followed
 * @param on the day, or the first of several
 * @param until the last day
 * @param priced empty while no tariff holds for the day
 * @param tariff the tariff by which it is priced; empty when the lot says what it cost, and without a price
 * @param movement the movement of the stock that took it
 */
public record ChargeLine(
        ChargeSource source,
        UUID fact,
        ChargeRule rule,
        TariffItem item,
        @Nullable Side side,
        LocalDate on,
        LocalDate until,
        BigDecimal quantity,
        Optional<Priced> priced,
        Optional<TariffId> tariff,
        Optional<UUID> movement) {

    public ChargeLine {
        quantity = quantity.setScale(2, RoundingMode.HALF_UP);
    }

    /** What it is about: two lines about the same do not stand beside each other. */
    record Subject(
            ChargeSource source,
            UUID fact,
            ChargeRule rule,
            TariffItem item,
            @Nullable Side side,
            LocalDate on,
            Optional<UUID> movement) {}

    Subject subject() {
        return new Subject(source, fact, rule, item, side, on, movement);
    }

    /** The same taken back: as much below nothing. */
    ChargeLine negated() {
        return new ChargeLine(
                source,
                fact,
                rule,
                item,
                side,
                on,
                until,
                quantity.negate(),
                priced.map(Priced::negated),
                tariff,
                movement);
    }
}
