package org.espalier.stock;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What was taken for a child.
 *
 * @param certainLot the lot, when it is certain
 * @param possibleLots every lot it may be, the certain one too
 * @param unitCost what one piece cost; of mixed lots, their mean; empty when not known
 * @param expired whether the last day of use of any of these lots is past
 */
public record Used(
        UUID movement,
        ProductId product,
        Optional<LotId> certainLot,
        List<LotId> possibleLots,
        Optional<UnitCost> unitCost,
        boolean expired) {

    public Used {
        possibleLots = List.copyOf(possibleLots);
    }
}
