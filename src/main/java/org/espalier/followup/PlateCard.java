package org.espalier.followup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.stock.Magnet;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;

/**
 * What the family carries: what is in the child, of which lot, what a scanner's department must know, and whom to call.
 * No more of the child than its given name.
 *
 * @param by the last good day of the next look; empty when there is no open visit
 * @param madeOn the day it was printed: it tells what was known then
 */
record PlateCard(
        String givenName,
        String hospital,
        Letterhead letterhead,
        List<Item> items,
        Optional<LocalDate> by,
        LocalDate madeOn,
        LetterLanguage language) {

    PlateCard {
        items = List.copyOf(items);
    }

    /**
     * One implant.
     *
     * @param pieces each with its lot, as they are called in the catalogue
     */
    record Item(
            PhysisKey physis,
            Optional<PlateSide> side,
            LocalDate since,
            String what,
            List<Part> pieces,
            Magnet magnet) {

        Item {
            pieces = List.copyOf(pieces);
        }
    }

    /**
     * A piece of it.
     *
     * @param lots its lot, or with commas those it may be of; empty when not known
     */
    record Part(String what, Optional<String> lots, boolean certain) {}

    /** What all that is in together is in a scanner: the least safe of it. */
    Magnet magnet() {
        return List.of(Magnet.UNSAFE, Magnet.NOT_KNOWN, Magnet.CONDITIONAL).stream()
                .filter(status -> items.stream().anyMatch(item -> item.magnet() == status))
                .findFirst()
                .orElse(Magnet.SAFE);
    }
}
