package org.espalier.stock;

import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.stock.StockRefusal.Reason;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What operations take from the shelves and take out of children. Each takes part in the caller's transaction, so that
 * the stock falls with the record of the operation or not at all.
 */
@Service
@Transactional
public class UseService {

    private final JdbcShelfRepository shelves;
    private final JdbcShelfLineRepository lines;
    private final JdbcMovementRepository movements;
    private final SiteService sites;
    private final Clock clock;

    UseService(
            JdbcShelfRepository shelves,
            JdbcShelfLineRepository lines,
            JdbcMovementRepository movements,
            SiteService sites,
            Clock clock) {
        this.shelves = shelves;
        this.lines = lines;
        this.movements = movements;
        this.sites = sites;
        this.clock = clock;
    }

    /**
     * Where a product may be taken from at a hospital: first what expires first, then what never does; last what is
     * expired, which is shown so that nobody looks for it.
     */
    public List<Proposal> proposals(SiteId site, ProductId product) {
        var usable = usable(site);
        var today = sites.today(site);
        return lines.of(site, product).stream()
                .filter(line -> usable.containsKey(line.shelf()))
                .map(line -> Proposal.of(Objects.requireNonNull(usable.get(line.shelf())), line, today))
                .sorted(Comparator.comparing(Proposal::expired).thenComparing(Proposal::lastDay))
                .toList();
    }

    /** All that an operation may take at a hospital, trays first and then what expires first. */
    public List<Proposal> implants(SiteId site) {
        var usable = usable(site);
        var today = sites.today(site);
        return lines.used(site).stream()
                .flatMap(line ->
                        Stream.ofNullable(usable.get(line.shelf())).map(shelf -> Proposal.of(shelf, line, today)))
                .sorted(Proposal.AT_HAND)
                .toList();
    }

    private Map<ShelfId, Shelf> usable(SiteId site) {
        return shelves.of(site).stream()
                .filter(shelf -> shelf.kind().isUsable() && shelf.closedOn() == null)
                .collect(Collectors.toMap(Shelf::id, Function.identity()));
    }

    /**
     * Takes pieces for a child. What is past its last day is taken all the same when it was used, and said to be.
     *
     * @throws StockRefusal when they are not there to be taken
     */
    public Used use(Use use) {
        var from = shelves.find(use.from()).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
        if (!from.kind().isUsable()) {
            throw new StockRefusal(Reason.NOT_FROM_THERE);
        }
        var today = sites.today(from.site());
        if (from.kind() == ShelfKind.TRAY && shelves.isUsedByOther(from.id(), today, use.holder())) {
            throw new StockRefusal(Reason.TRAY_USED_TODAY);
        }
        var possible = use.lot().map(List::of).orElseGet(() -> mixed(from, use.product()));
        var cost = movements.cost(from.site(), use.product(), possible);
        var step = new Step(
                use.movement(),
                use.product(),
                use.from(),
                end(from.site(), ShelfKind.CHILDREN),
                use.lot().orElse(null),
                null,
                use.quantity(),
                use.holder(),
                null,
                null,
                cost.orElse(null),
                clock.instant());
        var outcome = movements.move(step).orRefuse();
        var last = outcome.expires();
        return new Used(
                use.movement(),
                use.product(),
                outcome.lots().size() == 1 ? Optional.of(outcome.lots().getFirst()) : Optional.empty(),
                outcome.lots(),
                cost,
                last != null && last.isBefore(today));
    }

    /**
     * One piece that lay on no shelf here.
     *
     * @param movement made by whoever asks, so that asking twice books once
     * @param lot empty only for what has none
     */
    public record Outside(UUID movement, SiteId site, ProductId product, Optional<LotId> lot, UUID holder) {}

    /**
     * Books a piece that lay on no shelf here, as on loan: from its supplier straight into the child, so that its lot
     * is found again.
     *
     * @param why in a few words
     * @throws StockRefusal when its lot is wanting
     */
    public void useFromOutside(Outside piece, String why) {
        var lots = piece.lot().map(List::of).orElse(List.of());
        var step = new Step(
                piece.movement(),
                piece.product(),
                end(piece.site(), ShelfKind.SUPPLIER),
                end(piece.site(), ShelfKind.CHILDREN),
                piece.lot().orElse(null),
                null,
                1,
                piece.holder(),
                null,
                why,
                movements.cost(piece.site(), piece.product(), lots).orElse(null),
                clock.instant());
        movements.move(step).orRefuse();
    }

    private List<LotId> mixed(Shelf from, ProductId product) {
        return lines.of(from.site(), product).stream()
                .filter(line -> line.shelf().equals(from.id()) && line.lot().isEmpty())
                .flatMap(line -> line.possible().stream())
                .map(Lot::id)
                .toList();
    }

    /**
     * Puts what was taken out of a child where it goes.
     *
     * @throws StockRefusal when the hospital is not the caller's
     */
    public void explant(Explant explant) {
        var step = new Step(
                explant.movement(),
                explant.product(),
                end(explant.site(), ShelfKind.CHILDREN),
                end(explant.site(), ShelfKind.valueOf(explant.fate().name())),
                explant.lots().size() == 1 ? explant.lots().getFirst() : null,
                explant.lots().size() == 1 ? null : explant.lots(),
                explant.quantity(),
                explant.holder(),
                null,
                null,
                null,
                clock.instant());
        movements.move(step).orRefuse();
    }

    /**
     * Takes a use or an explant back, because what was recorded of the operation did not happen so.
     *
     * @param movement what is taken back
     * @param id of the movement that takes it back, made by whoever asks
     * @throws StockRefusal when there is none such, or it was taken back before by another
     */
    public void takeBack(UUID movement, UUID id, String why) {
        var taken = movements.find(movement).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
        var outcome = taken.reversed() ? movements.find(id) : Optional.<Movement>empty();
        if (taken.reversed() && outcome.isEmpty()) {
            throw new StockRefusal(Reason.TAKEN_BACK_BEFORE);
        }
        movements.move(Steps.back(taken, id, why, clock.instant())).orRefuse();
    }

    /** What was moved for one procedure, in order. */
    public List<Movement> ofHolder(UUID holder) {
        return movements.of(holder);
    }

    /** What stands used for one procedure, with its lots and what a piece cost; what was taken back is left out. */
    public List<Movement> usedFor(UUID holder) {
        return standing(holder)
                .filter(movement -> movement.to().kind() == ShelfKind.CHILDREN)
                .toList();
    }

    /** What stands taken out by one procedure; what was taken back is left out. */
    public List<Movement> takenOutBy(UUID holder) {
        return standing(holder)
                .filter(movement -> movement.from().kind() == ShelfKind.CHILDREN)
                .toList();
    }

    private Stream<Movement> standing(UUID holder) {
        return movements.of(holder).stream()
                .filter(movement -> !movement.reversed() && movement.reverses().isEmpty());
    }

    /** For whom pieces were used that are, or may be, of the lot; what was taken back is left out. */
    public List<LotUse> ofLot(LotId lot) {
        return movements.uses(lot);
    }

    private ShelfId end(SiteId site, ShelfKind kind) {
        return shelves.one(site, kind).map(Shelf::id).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
    }
}
