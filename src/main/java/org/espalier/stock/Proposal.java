package org.espalier.stock;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;

/**
 * Where an operation may take a product from: what expires first comes first, then what stands open on a tray.
 *
 * @param line what lies there
 * @param expired whether the last day of use is past: shown, never proposed
 */
public record Proposal(Shelf shelf, ShelfLine line, boolean expired) {

    /** On trays first, then what expires first; what is expired last. */
    public static final Comparator<Proposal> AT_HAND = Comparator.comparing(Proposal::expired)
            .thenComparing(one -> one.shelf().kind() != ShelfKind.TRAY)
            .thenComparing(Proposal::lastDay);

    /** The last day of use; of what never expires, the end of all days. */
    LocalDate lastDay() {
        return line.lot().flatMap(lot -> Optional.ofNullable(lot.expires())).orElse(LocalDate.MAX);
    }

    static Proposal of(Shelf shelf, ShelfLine line, LocalDate today) {
        boolean expired = line.lot().filter(lot -> lot.isExpiredOn(today)).isPresent();
        return new Proposal(shelf, line, expired);
    }
}
