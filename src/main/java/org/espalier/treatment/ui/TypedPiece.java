package org.espalier.treatment.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.espalier.stock.Lot;
import org.espalier.stock.LotId;
import org.espalier.stock.ProductId;
import org.espalier.stock.Proposal;
import org.espalier.stock.ShelfId;
import org.espalier.treatment.Piece;
import org.jspecify.annotations.Nullable;

/** One piece as it stands in the form: from a shelf, or with or still without the reason why from none. */
record TypedPiece(
        Piece.Role role,
        @Nullable ProductId product,
        String what,
        @Nullable String lotNumbers,
        @Nullable LocalDate expires,
        List<LotId> lots,
        @Nullable ShelfId shelf,
        Piece.@Nullable Outside outside,
        @Nullable UUID movement) {

    static TypedPiece of(Piece piece) {
        return new TypedPiece(
                piece.role(),
                piece.product(),
                piece.what(),
                piece.lotNumbers(),
                piece.expires(),
                piece.lots(),
                piece.shelf(),
                piece.outside(),
                piece.movement());
    }

    Piece toPiece() {
        return new Piece(role, product, what, lotNumbers, expires, lots, shelf, outside, movement);
    }

    /** The same from the line of a shelf; of the lots there the one that was read, if one was. */
    TypedPiece from(Proposal proposal) {
        var line = proposal.line();
        var possible = line.lot().map(List::of).orElseGet(line::possible);
        var read =
                possible.stream().filter(lot -> lot.number().equals(lotNumbers)).toList();
        var of = read.isEmpty() ? possible : read;
        return new TypedPiece(
                role,
                product,
                what,
                of.isEmpty()
                        ? null
                        : String.join(", ", of.stream().map(Lot::number).toList()),
                of.stream()
                        .map(Lot::expires)
                        .filter(Objects::nonNull)
                        .min(LocalDate::compareTo)
                        .orElse(null),
                of.size() == 1 ? List.of(of.getFirst().id()) : List.of(),
                proposal.shelf().id(),
                null,
                null);
    }

    TypedPiece because(Piece.@Nullable Outside why) {
        return new TypedPiece(role, product, what, lotNumbers, expires, List.of(), null, why, null);
    }

    TypedPiece withRole(Piece.Role other) {
        return new TypedPiece(other, product, what, lotNumbers, expires, lots, shelf, outside, movement);
    }

    TypedPiece called(String name, @Nullable String lot) {
        return new TypedPiece(role, product, name, lot, expires, lots, shelf, outside, movement);
    }
}
