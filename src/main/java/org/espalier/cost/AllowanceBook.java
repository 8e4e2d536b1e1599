package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.treatment.ProcedureKind;

/**
 * What operations take by agreement at one hospital. Minutes, casts and braces add up over all that is done; of nights,
 * sessions and pictures in layers the operation takes the most that any one thing takes.
 */
record AllowanceBook(List<Allowance> allowances) {

    AllowanceBook {
        allowances = List.copyOf(allowances);
    }

    /** Of nights and the like one stay serves all that is done. */
    static boolean isShared(TariffItem item) {
        return item == TariffItem.BED_DAY || item == TariffItem.PHYSIOTHERAPY || item == TariffItem.MRI;
    }

    /** How much is agreed on the day; nothing where nothing is. */
    BigDecimal find(Optional<ProcedureKind> kind, TariffItem item, LocalDate day) {
        return allowances.stream()
                .filter(one -> one.kind().equals(kind) && one.item() == item && one.holdsOn(day))
                .map(Allowance::quantity)
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    /** The most that any of them takes, or every operation. */
    BigDecimal most(Collection<ProcedureKind> kinds, TariffItem item, LocalDate day) {
        return kinds.stream()
                .map(kind -> find(Optional.of(kind), item, day))
                .reduce(find(Optional.empty(), item, day), BigDecimal::max);
    }

    /** What one operation takes in which all of them are done. */
    Map<TariffItem, BigDecimal> operation(List<ProcedureKind> kinds, LocalDate day) {
        var taken = new EnumMap<TariffItem, BigDecimal>(TariffItem.class);
        for (var item : TariffItem.allowed()) {
            var quantity = isShared(item) ? most(kinds, item, day) : sum(kinds, item, day);
            if (quantity.signum() > 0) {
                taken.put(item, quantity);
            }
        }
        return taken;
    }

    private BigDecimal sum(List<ProcedureKind> kinds, TariffItem item, LocalDate day) {
        return kinds.stream()
                .map(kind -> find(Optional.of(kind), item, day))
                .reduce(find(Optional.empty(), item, day), BigDecimal::add);
    }
}
