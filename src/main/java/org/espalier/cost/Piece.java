package org.espalier.cost;

import java.util.Optional;
import java.util.UUID;
import org.espalier.stock.Movement;
import org.espalier.stock.ShelfKind;
import org.espalier.stock.UnitCost;

/** Pieces of one product that an operation took from a shelf. */
record Piece(UUID movement, int quantity, Optional<UnitCost> cost) {

    /** Empty for what was taken back or came out of a child. */
    static Optional<Piece> of(Movement movement) {
        boolean used = movement.to().kind() == ShelfKind.CHILDREN
                && movement.reverses().isEmpty()
                && !movement.reversed();
        return used ? Optional.of(new Piece(movement.id(), movement.quantity(), movement.cost())) : Optional.empty();
    }
}
