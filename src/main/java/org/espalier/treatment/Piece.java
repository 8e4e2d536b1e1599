package org.espalier.treatment;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.stock.LotId;
import org.espalier.stock.ProductId;
import org.espalier.stock.ProductKind;
import org.espalier.stock.ShelfId;
import org.jspecify.annotations.Nullable;

/**
 * One thing that went in by an act, or was used up in it.
 *
 * @param product null for what is in no catalogue
 * @param what in words, as it was called when it was recorded
 * @param lotNumbers its lot as printed, or with commas between the lots it may be of; null when nothing is known
 * @param expires the last day of use, or the first of several; null where there is none or nothing is known
 * @param lots the same lots as the catalogue knows them
 * @param shelf where it was taken from; null for what lay on no shelf here
 * @param outside why it lay on none; null for what was taken from one
 * @param movement by which the stock gave it; null before it did, and for what it never had
 */
public record Piece(
        Role role,
        @Nullable ProductId product,
        String what,
        @Nullable String lotNumbers,
        @Nullable LocalDate expires,
        List<LotId> lots,
        @Nullable ShelfId shelf,
        @Nullable Outside outside,
        @Nullable UUID movement) {

    /** What it is of the implant. */
    public enum Role {
        /** The plate, the staple, the frame, the screw that crosses a physis. */
        BODY,
        METAPHYSEAL_SCREW,
        EPIPHYSEAL_SCREW,
        /** A screw of which it was not said where it holds. */
        SCREW,
        /** Not left in. */
        USED_UP;

        /** What a product comes to be in a procedure, as far as its kind tells. */
        public static Role of(ProcedureKind procedure, ProductKind product) {
            return switch (product) {
                case SCREW -> ofScrew(procedure);
                case PLATE, STAPLE, FRAME -> BODY;
                case WIRE -> procedure.fixationOut() == ProcedureKind.FRAME_OFF ? BODY : USED_UP;
                default -> USED_UP;
            };
        }

        private static Role ofScrew(ProcedureKind procedure) {
            return switch (procedure) {
                case TRANSPHYSEAL_SCREW_PLACED -> BODY;
                case METAPHYSEAL_SCREW_IN, METAPHYSEAL_SCREW_EXCHANGED -> METAPHYSEAL_SCREW;
                case EPIPHYSEAL_SCREW_IN, EPIPHYSEAL_SCREW_EXCHANGED -> EPIPHYSEAL_SCREW;
                default -> SCREW;
            };
        }
    }

    /** Why a piece lay on no shelf. */
    public enum Outside {
        LOAN,
        EMERGENCY,
        OTHER
    }

    private static final int LOTS_LENGTH = 400;

    public Piece {
        what = Written.required(what, Act.IMPLANTS_LENGTH);
        lotNumbers = Written.tidy(lotNumbers, LOTS_LENGTH);
        lots = List.copyOf(lots);
        if ((shelf == null) == (outside == null)) {
            throw new IllegalArgumentException("A piece lay on a shelf, or it is said why not: " + what);
        }
        if (shelf != null && product == null) {
            throw new IllegalArgumentException("What lies on a shelf is a product: " + what);
        }
    }

    /** A piece taken from a shelf; the lot is known, or empty where the lots are mixed. */
    public static Piece ofShelf(Role role, ProductId product, String what, ShelfId shelf, Optional<LotId> lot) {
        return new Piece(role, product, what, null, null, lot.map(List::of).orElse(List.of()), shelf, null, null);
    }

    /** A piece that lay on no shelf here. */
    public static Piece ofOutside(
            Role role,
            @Nullable ProductId product,
            String what,
            @Nullable String lotNumber,
            @Nullable LocalDate expires,
            Outside why) {
        return new Piece(role, product, what, lotNumber, expires, List.of(), null, why, null);
    }

    /** Whether it stays in the child. */
    public boolean isLeftIn() {
        return role != Role.USED_UP;
    }

    /** Whether it is known of which lot it is. */
    public boolean isOfOneLot() {
        return lots.size() == 1 || lots.isEmpty() && lotNumbers != null && !lotNumbers.contains(", ");
    }

    public Piece withRole(Role other) {
        return new Piece(other, product, what, lotNumbers, expires, lots, shelf, outside, movement);
    }
    /** The same, of one of several lots: which is not known. */
    public Piece ofLots(List<LotId> several) {
        return given(several, lotNumbers, expires, movement);
    }

    Piece given(List<LotId> of, @Nullable String numbers, @Nullable LocalDate last, @Nullable UUID by) {
        return new Piece(role, product, what, numbers, last, of, shelf, outside, by);
    }

    /** The same of which it is no longer clear which of several like it it is. */
    Piece orOneOf(List<Piece> alike) {
        var of = alike.stream().flatMap(one -> one.lots.stream()).distinct().toList();
        var numbers = alike.stream()
                .flatMap(one -> one.lotNumbers == null ? Stream.empty() : Stream.of(one.lotNumbers.split(", ")))
                .distinct()
                .toList();
        return given(of, numbers.isEmpty() ? null : String.join(", ", numbers), expires, movement);
    }
}
