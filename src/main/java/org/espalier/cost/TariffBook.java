package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The tariffs of one hospital, to look prices up in. A payer's own price goes before the one for everybody. */
record TariffBook(List<Tariff> tariffs) {

    TariffBook {
        tariffs = List.copyOf(tariffs);
    }

    /** The price on the day; empty when none is set. */
    Optional<Tariff> find(TariffItem item, String payer, LocalDate day) {
        return own(item, payer, day).or(() -> own(item, "", day));
    }

    /** What comes on top of the item on the day in percent; nothing when no share is set. */
    BigDecimal overhead(TariffItem item, String payer, LocalDate day) {
        return find(item.overhead(), payer, day)
                .map(found -> found.data().price())
                .orElse(BigDecimal.ZERO);
    }

    private Optional<Tariff> own(TariffItem item, String payer, LocalDate day) {
        return tariffs.stream()
                .filter(one -> one.data().item() == item && one.data().payer().equals(payer))
                .filter(one -> one.holdsOn(day))
                .findFirst();
    }
}
