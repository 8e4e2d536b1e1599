package org.espalier.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.kit.Texts;
import org.espalier.platform.Ids;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Lot;
import org.espalier.stock.LotId;
import org.espalier.stock.Movement;
import org.espalier.stock.ReservationService;
import org.espalier.stock.Shelf;
import org.espalier.stock.StockService;
import org.espalier.stock.Use;
import org.espalier.stock.UseService;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Moves in the stock what a procedure puts in and takes out, in the transaction that records it. Everything runs under
 * the first record of the procedure, so that a correction moves only what it changes.
 */
@Component
class StockBook {

    private final UseService uses;
    private final StockService stock;
    private final CatalogueService catalogue;
    private final ReservationService reservations;
    private final ExplantBook explants;
    private final Ids ids;

    StockBook(
            UseService uses,
            StockService stock,
            CatalogueService catalogue,
            ReservationService reservations,
            ExplantBook explants,
            Ids ids) {
        this.uses = uses;
        this.stock = stock;
        this.catalogue = catalogue;
        this.reservations = reservations;
        this.explants = explants;
        this.ids = ids;
    }

    /**
     * The procedure with its pieces taken from the shelves. What it stands in place of gives back what it took and this
     * does not keep; what came out of the child by it, or by another as it now follows, goes where it was said to go.
     *
     * @throws StockRefused when a piece cannot be given or taken back
     */
    Procedure book(SiteId site, TreatmentRecord record, Procedure procedure) {
        var all = record.with(procedure);
        var first = Procedure.first(all.procedures(), procedure.id());
        var before = procedure.supersedes().flatMap(record::procedure).flatMap(Procedure::data);
        giveBack(first, before, procedure.data());
        var booked = procedure.withData(procedure.data().map(data -> data.withActs(take(site, first, data, before))));
        endReservations(record, procedure);
        explants.settle(site, record, record.with(booked));
        return booked;
    }

    private void giveBack(ProcedureId first, Optional<ProcedureData> before, Optional<ProcedureData> kept) {
        if (pieces(before).findAny().isPresent()) {
            var stays = taken(kept).keySet();
            uses.usedFor(first.value()).stream()
                    .filter(movement -> !stays.contains(movement.id()))
                    .forEach(this::takeBack);
        }
    }

    /** Takes what has not been taken before, and says of each piece of which lot it is. */
    private List<Act> take(SiteId site, ProcedureId first, ProcedureData data, Optional<ProcedureData> before) {
        var known = taken(before);
        var acts = new ArrayList<>(data.acts());
        IntStream.range(0, acts.size())
                .boxed()
                .flatMap(
                        act -> IntStream.range(0, acts.get(act).pieces().size()).mapToObj(at -> new Place(act, at)))
                .sorted(Comparator.comparing(place -> order(place.in(acts))))
                .toList()
                .forEach(place -> place.put(acts, taken(site, first, data.elsewhere(), place.in(acts), known)));
        return acts;
    }

    /** What was kept for a plan is free again when the plan is done. */
    private void endReservations(TreatmentRecord record, Procedure procedure) {
        procedure.data().stream()
                .flatMap(data -> data.acts().stream())
                .flatMap(act -> Stream.ofNullable(act.plan()))
                .flatMap(plan -> record.plans().find(plan).stream())
                .flatMap(written -> record.plans().line(written).stream())
                .forEach(plan -> reservations.end(plan.value()));
    }

    /** A place of a piece among the acts of a procedure. */
    private record Place(int act, int at) {

        Piece in(List<Act> acts) {
            return acts.get(act).pieces().get(at);
        }

        void put(List<Act> acts, Piece piece) {
            var pieces = new ArrayList<>(acts.get(act).pieces());
            pieces.set(at, piece);
            acts.set(act, acts.get(act).withPieces(pieces));
        }
    }

    private void takeBack(Movement movement) {
        StockRefused.telling(movement.product().data().name(), () -> {
            uses.takeBack(movement.id(), ids.next(), Texts.text("treatment.stock.corrected"));
            return movement;
        });
    }

    private Piece taken(SiteId site, ProcedureId first, boolean elsewhere, Piece piece, Map<UUID, Piece> known) {
        if (piece.movement() != null) {
            return Optional.ofNullable(known.get(piece.movement()))
                    .map(before -> before.withRole(piece.role()))
                    .orElseThrow(() -> new IllegalArgumentException("not taken before: " + piece.movement()));
        }
        return StockRefused.telling(
                piece.what(),
                () -> piece.shelf() == null
                        ? fromOutside(site, first, elsewhere, piece)
                        : fromShelf(site, first, elsewhere, piece));
    }

    private Piece fromShelf(SiteId site, ProcedureId first, boolean elsewhere, Piece piece) {
        var shelf = stock.shelf(Objects.requireNonNull(piece.shelf()));
        if (elsewhere || shelf.map(Shelf::site).filter(site::equals).isEmpty()) {
            throw new IllegalArgumentException("an operation takes from the shelves of its own hospital");
        }
        var lot = piece.lots().size() == 1 ? Optional.of(piece.lots().getFirst()) : Optional.<LotId>empty();
        var used = uses.use(new Use(
                ids.next(),
                Objects.requireNonNull(piece.shelf()),
                Objects.requireNonNull(piece.product()),
                lot,
                1,
                first.value()));
        return given(piece, used.possibleLots(), used.movement());
    }

    /** What lay on no shelf is booked from its supplier straight into the child, so that its lot is found again. */
    private Piece fromOutside(SiteId site, ProcedureId first, boolean elsewhere, Piece piece) {
        var product = piece.product();
        var number = piece.lotNumbers();
        boolean lotsKnown = piece.lots().size() > 1;
        if (product == null || number == null || lotsKnown) {
            return piece;
        }
        var lot = catalogue.lotOf(product, number, piece.expires()).id();
        if (elsewhere) {
            return given(piece, List.of(lot), null);
        }
        var movement = ids.next();
        uses.useFromOutside(
                new UseService.Outside(movement, site, product, Optional.of(lot), first.value()),
                Texts.of(Objects.requireNonNull(piece.outside())));
        return given(piece, List.of(lot), movement);
    }

    private Piece given(Piece piece, List<LotId> of, @Nullable UUID movement) {
        var lots = of.stream().flatMap(lot -> catalogue.lot(lot).stream()).toList();
        var numbers = lots.stream().map(Lot::number).collect(Collectors.joining(", "));
        var last = lots.stream().map(Lot::expires).filter(Objects::nonNull).min(Comparator.<LocalDate>naturalOrder());
        return piece.given(of, numbers.isEmpty() ? null : numbers, last.orElse(null), movement);
    }

    /** What was taken from the stock, by its movements. */
    private static Map<UUID, Piece> taken(Optional<ProcedureData> data) {
        var taken = new HashMap<UUID, Piece>();
        pieces(data).forEach(piece -> Optional.ofNullable(piece.movement()).ifPresent(by -> taken.put(by, piece)));
        return taken;
    }

    private static Stream<Piece> pieces(Optional<ProcedureData> data) {
        return data.stream().flatMap(one -> one.acts().stream()).flatMap(act -> act.pieces().stream());
    }

    /** All take in one order, so that no two operations wait for each other. */
    private static String order(Piece piece) {
        return piece.shelf() + " " + piece.product();
    }
}
