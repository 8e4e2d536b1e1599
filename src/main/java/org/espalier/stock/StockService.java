package org.espalier.stock;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.platform.Ids;
import org.espalier.stock.StockRefusal.Reason;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Shelves, what lies on them, and the movements of a storekeeper. */
@Service
@Transactional
public class StockService {

    /** How many movements a list shows. */
    public static final int SHOWN = 50;

    /** More lines of a shelf nobody reads. */
    public static final int MOST_LINES = 2_000;

    private final JdbcShelfRepository shelves;
    private final JdbcShelfLineRepository lines;
    private final JdbcMovementRepository movements;
    private final JdbcStockCheckRepository checks;
    private final CatalogueService catalogue;
    private final SiteService sites;
    private final Ids ids;
    private final Clock clock;

    StockService(
            JdbcShelfRepository shelves,
            JdbcShelfLineRepository lines,
            JdbcMovementRepository movements,
            JdbcStockCheckRepository checks,
            CatalogueService catalogue,
            SiteService sites,
            Ids ids,
            Clock clock) {
        this.shelves = shelves;
        this.lines = lines;
        this.movements = movements;
        this.checks = checks;
        this.catalogue = catalogue;
        this.sites = sites;
        this.ids = ids;
        this.clock = clock;
    }

    /** The shelves of a hospital, those that operations take from first; the ends of the book last. */
    public List<Shelf> shelves(SiteId site) {
        return shelves.of(site);
    }

    public Optional<Shelf> shelf(ShelfId id) {
        return shelves.find(id);
    }

    /**
     * Puts up a shelf.
     *
     * @throws StockRefusal when the hospital has one of that name
     */
    public ShelfId addShelf(SiteId site, ShelfData data) {
        var id = new ShelfId(ids.next());
        try {
            shelves.add(id, site, data);
        } catch (DuplicateKeyException taken) {
            throw new StockRefusal(Reason.TAKEN_NAME);
        }
        return id;
    }

    /** Changes what is said of a shelf. */
    public void changeShelf(Shelf old, ShelfData data) {
        if (!shelves.change(old, data)) {
            throw new StockRefusal(Reason.CHANGED_MEANWHILE);
        }
    }

    /** Takes an empty shelf out of use. */
    public void closeShelf(Shelf shelf) {
        if (!shelves.close(shelf, sites.today(shelf.site()))) {
            throw new StockRefusal(Reason.NOT_EMPTY);
        }
    }

    /** A tray goes to be sterilised. */
    public void sterilise(ShelfId tray) {
        demand(shelves.setSterilising(tray, true));
    }

    /** A tray is back and ready for an operation. */
    public void trayIsBack(ShelfId tray) {
        demand(shelves.setSterilising(tray, false));
    }

    /** What lies on a shelf, by kind, name and size; no more than {@link #MOST_LINES}. */
    public List<ShelfLine> on(ShelfId shelf) {
        return lines.on(shelf, "", MOST_LINES);
    }

    /** The same of products and lots that have the part in name, reference or number. */
    public List<ShelfLine> find(ShelfId shelf, String part) {
        return lines.on(shelf, part, MOST_LINES);
    }

    /** Where a product lies at a hospital, the first to expire first. */
    public List<ShelfLine> of(SiteId site, ProductId product) {
        return lines.of(site, product);
    }

    /** Where a lot lies at a hospital, or may. */
    public List<ShelfLine> ofLot(SiteId site, LotId lot) {
        return lines.of(site, lot);
    }

    /**
     * Carries pieces from one shelf of a hospital to another.
     *
     * @throws StockRefusal when it cannot be
     */
    public void move(Move move) {
        var both = shelves.find(move.from(), move.to());
        var from = both.get(move.from());
        var to = both.get(move.to());
        if (from == null || to == null) {
            throw new StockRefusal(Reason.NOT_THERE);
        }
        if (!from.kind().mayPassTo(to.kind())
                || from.kind() == ShelfKind.SUPPLIER
                || !from.site().equals(to.site())) {
            throw new StockRefusal(Reason.NOT_FROM_THERE);
        }
        movements.move(Step.of(move, clock.instant())).orRefuse();
    }

    /**
     * Takes in what came from a supplier.
     *
     * @throws StockRefusal when it cannot be
     */
    public void receive(Arrival arrival) {
        var to = shelves.find(arrival.to()).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
        var product = catalogue.product(arrival.product()).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
        if (product.data().traced() && arrival.lotNumber().isEmpty()) {
            throw new StockRefusal(Reason.LOT_WANTED);
        }
        if (!product.data().traced() && arrival.lotNumber().isPresent()) {
            throw new StockRefusal(Reason.NO_LOTS_KEPT);
        }
        if (!ShelfKind.SUPPLIER.mayPassTo(to.kind())) {
            throw new StockRefusal(Reason.NOT_FROM_THERE);
        }
        var lot = arrival.lotNumber()
                .map(number -> catalogue.lotOf(
                        arrival.product(), number, arrival.expires().orElse(null)));
        var step = new Step(
                arrival.id(),
                arrival.product(),
                shelves.one(to.site(), ShelfKind.SUPPLIER).orElseThrow().id(),
                arrival.to(),
                lot.map(Lot::id).orElse(null),
                null,
                arrival.quantity(),
                null,
                null,
                null,
                arrival.cost().orElse(null),
                clock.instant());
        movements.move(step).orRefuse();
    }

    /**
     * Takes a movement back by another, so that both stay to be seen.
     *
     * @param id of the new movement
     * @param why in a few words
     * @throws StockRefusal when the pieces are not there any more
     */
    public void takeBack(Movement movement, UUID id, String why) {
        var back = Steps.back(movement, id, why, clock.instant());
        if (movement.reversed()) {
            throw new StockRefusal(Reason.TAKEN_BACK_BEFORE);
        }
        movements.move(back).orRefuse();
    }

    /** The last movements of a hospital, the latest first. */
    public List<Movement> latest(SiteId site) {
        return movements.latest(site, SHOWN);
    }

    /** The last movements of a product at a hospital, the latest first. */
    public List<Movement> history(SiteId site, ProductId product) {
        return movements.of(site, product, SHOWN);
    }

    /** The last movements of a lot at a hospital, the latest first. */
    public List<Movement> historyOfLot(SiteId site, LotId lot) {
        return movements.of(site, lot, SHOWN);
    }

    /** Where what is kept beside the movements differs from them, in words for the log; nothing when all is well. */
    public List<String> check(SiteId site) {
        return checks.differences(site);
    }

    /** Makes what is kept beside the movements anew from them. */
    public void rebuild(SiteId site) {
        checks.rebuild(site);
    }

    private static void demand(boolean done) {
        if (!done) {
            throw new StockRefusal(Reason.NOT_THERE);
        }
    }
}
