package org.espalier.stock;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.CurrentStaff;
import org.espalier.kit.Texts;
import org.espalier.platform.Ids;
import org.espalier.stock.StockRefusal.Reason;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Counting a shelf: what the books said and what was counted are both kept, and a difference becomes a movement. */
@Service
@Transactional
public class CountService {

    private final JdbcCountRepository counts;
    private final JdbcShelfRepository shelves;
    private final JdbcShelfLineRepository lines;
    private final JdbcMovementRepository movements;
    private final CurrentStaff currentStaff;
    private final Ids ids;
    private final Clock clock;

    CountService(
            JdbcCountRepository counts,
            JdbcShelfRepository shelves,
            JdbcShelfLineRepository lines,
            JdbcMovementRepository movements,
            CurrentStaff currentStaff,
            Ids ids,
            Clock clock) {
        this.counts = counts;
        this.shelves = shelves;
        this.lines = lines;
        this.movements = movements;
        this.currentStaff = currentStaff;
        this.ids = ids;
        this.clock = clock;
    }

    /** Begins to count a shelf, or goes on with the sheet that is open. */
    public CountSheet open(ShelfId shelf) {
        var counted = shelves.find(shelf).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
        if (!counted.kind().isCounted()) {
            throw new StockRefusal(Reason.NOT_FROM_THERE);
        }
        counts.open(ids.next(), counted.site(), shelf, currentStaff.id(), clock.instant());
        return counts.openOf(shelf).orElseThrow();
    }

    /** The open sheet of a shelf. */
    public Optional<CountSheet> openOf(ShelfId shelf) {
        return counts.openOf(shelf);
    }

    /** The last five sheets that were closed, the latest first. */
    public List<CountSheet> closedOf(ShelfId shelf) {
        return counts.closedOf(shelf);
    }

    /** Writes down what was counted of one line; again when it was counted again. */
    public void count(UUID sheet, ProductId product, Optional<LotId> lot, int counted) {
        if (counted < 0) {
            throw new IllegalArgumentException("nothing less than nothing is counted: " + counted);
        }
        if (!counts.count(sheet, product, lot, counted, currentStaff.id(), clock.instant())) {
            throw new StockRefusal(Reason.CHANGED_MEANWHILE);
        }
    }

    /**
     * Closes a sheet; each difference becomes a movement.
     *
     * @throws StockRefusal when a piece that is missing was taken since, or the sheet was closed meanwhile
     */
    public CountSheet close(UUID sheet) {
        var counted = counts.find(sheet).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
        if (!counts.close(sheet, currentStaff.id(), clock.instant())) {
            throw new StockRefusal(Reason.CHANGED_MEANWHILE);
        }
        var shelf = shelves.find(counted.shelf()).orElseThrow();
        var differences = shelves.one(shelf.site(), ShelfKind.DIFFERENCE).orElseThrow();
        counted.lines().stream().filter(line -> line.difference() != 0).forEach(line -> movements
                .move(step(sheet, shelf, differences, line))
                .orRefuse());
        return counts.find(sheet).orElseThrow();
    }

    private Step step(UUID sheet, Shelf shelf, Shelf differences, CountSheet.Line line) {
        boolean tooMany = line.difference() > 0;
        var lot = line.lot().map(Lot::id);
        var name = sheet + " " + line.product().id() + " " + lot;
        return new Step(
                UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)),
                line.product().id(),
                tooMany ? differences.id() : shelf.id(),
                tooMany ? shelf.id() : differences.id(),
                lot.orElse(null),
                lot.isEmpty() && tooMany ? possible(shelf, line.product().id()) : null,
                Math.abs(line.difference()),
                null,
                null,
                Texts.text("stock.count.why"),
                null,
                clock.instant());
    }

    /** What is too much in a slot of mixed lots may be of any of them. */
    private List<LotId> possible(Shelf shelf, ProductId product) {
        return lines.of(shelf.site(), product).stream()
                .filter(line -> line.shelf().equals(shelf.id()) && line.lot().isEmpty())
                .flatMap(line -> line.possible().stream())
                .map(Lot::id)
                .toList();
    }
}
