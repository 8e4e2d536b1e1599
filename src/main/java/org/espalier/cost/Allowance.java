package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.espalier.treatment.ProcedureKind;

/**
 * How much of an item an operation takes by agreement.
 *
 * @param kind empty for what every operation takes once, whatever is done in it
 * @param from the first day it holds for
 * @param until the day from which it holds no longer; empty while it has no end
 */
public record Allowance(
        Optional<ProcedureKind> kind, TariffItem item, BigDecimal quantity, LocalDate from, Optional<LocalDate> until) {

    private static final BigDecimal MOST = new BigDecimal("10000");
    private static final int DECIMALS = 2;

    public Allowance {
        if (quantity.signum() < 0
                || quantity.compareTo(MOST) > 0
                || quantity.stripTrailingZeros().scale() > DECIMALS) {
            throw new IllegalArgumentException("not how much an operation takes: " + quantity);
        }
        if (!TariffItem.allowed().contains(item)) {
            throw new IllegalArgumentException("an operation takes no " + item + " by agreement");
        }
    }

    /** Whether it can be how much an operation takes: not below nothing, to two decimals, at most ten thousand. */
    public static boolean isQuantity(BigDecimal quantity) {
        return quantity.signum() >= 0
                && quantity.compareTo(MOST) <= 0
                && quantity.stripTrailingZeros().scale() <= DECIMALS;
    }

    /** From a day on, without an end. */
    public static Allowance of(Optional<ProcedureKind> kind, TariffItem item, BigDecimal quantity, LocalDate from) {
        return new Allowance(kind, item, quantity, from, Optional.empty());
    }

    boolean holdsOn(LocalDate day) {
        return !day.isBefore(from) && until.filter(end -> !day.isBefore(end)).isEmpty();
    }
}
