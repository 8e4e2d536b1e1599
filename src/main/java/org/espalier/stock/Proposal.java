package org.espalier.stock;

import java.time.LocalDate;

/**
 * Where an operation may take a product from: what expires first comes first, then what stands open on a tray.
 *
 * @param line what lies there
 * @param expired whether the last day of use is past: shown, never proposed
 */
public record Proposal(Shelf shelf, ShelfLine line, boolean expired) {

    static Proposal of(Shelf shelf, ShelfLine line, LocalDate today) {
        boolean expired = line.lot().filter(lot -> lot.isExpiredOn(today)).isPresent();
        return new Proposal(shelf, line, expired);
    }
}
