package org.espalier.stock;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteId;
import org.espalier.stock.StockRefusal.Reason;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Goods from one hospital to another. They are the sender's until a person at the other end signs for them. */
@Service
@Transactional
public class StockTransferService {

    private final JdbcStockTransferRepository transfers;
    private final JdbcShelfRepository shelves;
    private final JdbcShelfLineRepository lines;
    private final JdbcMovementRepository movements;
    private final CurrentStaff currentStaff;
    private final Clock clock;

    StockTransferService(
            JdbcStockTransferRepository transfers,
            JdbcShelfRepository shelves,
            JdbcShelfLineRepository lines,
            JdbcMovementRepository movements,
            CurrentStaff currentStaff,
            Clock clock) {
        this.transfers = transfers;
        this.shelves = shelves;
        this.lines = lines;
        this.movements = movements;
        this.currentStaff = currentStaff;
        this.clock = clock;
    }

    /** One line of goods to be sent; the lot is empty where the lots are mixed, or none is kept. */
    public record Sent(ShelfId from, ProductId product, Optional<LotId> lot, int quantity) {}

    /**
     * Sends goods, signed by the caller.
     *
     * @param id of the transfer and of its shelf, made by whoever asks, so that asking twice sends once
     * @throws StockRefusal when something is not there to be sent
     */
    public void send(ShelfId id, SiteId from, SiteId to, List<Sent> goods) {
        if (transfers.find(id).isPresent()) {
            return;
        }
        shelves.addTransit(id, from, to);
        transfers.send(id, from, to, currentStaff.id(), clock.instant());
        for (int at = 0; at < goods.size(); at++) {
            var sent = goods.get(at);
            if (!shelves.find(sent.from())
                    .map(shelf -> shelf.kind().isUsable() && shelf.site().equals(from))
                    .orElse(false)) {
                throw new StockRefusal(Reason.NOT_FROM_THERE);
            }
            var cost = movements.cost(
                    from, sent.product(), sent.lot().map(List::of).orElse(List.of()));
            movements
                    .move(step(id, "sent " + at, sent.product(), sent.from(), id, sent.lot(), sent.quantity(), cost))
                    .orRefuse();
        }
    }

    /** Goods to and from a hospital, those not signed for first. */
    public List<StockTransfer> of(SiteId site) {
        return transfers.of(site);
    }

    /**
     * Signs for goods and lays all of them on a shelf of the hospital they came to. What is not there is counted there,
     * so that the difference is seen.
     *
     * @throws StockRefusal when they were signed for before, or by who sent them
     */
    public void receive(ShelfId transfer, ShelfId onto) {
        var goods = transfers.find(transfer).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
        var shelf = shelves.find(onto).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
        if (!shelf.site().equals(goods.to()) || !(shelf.kind().isUsable() || shelf.kind() == ShelfKind.QUARANTINE)) {
            throw new StockRefusal(Reason.NOT_FROM_THERE);
        }
        if (!transfers.sign(transfer, currentStaff.id(), clock.instant())) {
            throw new StockRefusal(goods.receivedBy().isPresent() ? Reason.CHANGED_MEANWHILE : Reason.SIGNED_BY_SENDER);
        }
        takeOff(transfer, onto, "received");
    }

    /** Takes goods back that were not signed for. */
    public void callBack(ShelfId transfer, ShelfId onto) {
        var goods = transfers.find(transfer).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
        var shelf = shelves.find(onto).orElseThrow(() -> new StockRefusal(Reason.NOT_THERE));
        if (!shelf.site().equals(goods.from()) || goods.receivedBy().isPresent()) {
            throw new StockRefusal(Reason.NOT_FROM_THERE);
        }
        takeOff(transfer, onto, "called back");
    }

    private void takeOff(ShelfId transfer, ShelfId onto, String deed) {
        int at = 0;
        for (var line : lines.all(transfer)) {
            var lot = line.lot().map(Lot::id);
            var product = line.product().id();
            var goal = isHeld(line) ? quarantine(onto) : onto;
            movements
                    .move(step(
                            transfer,
                            deed + " " + at++,
                            product,
                            transfer,
                            goal,
                            lot,
                            line.quantity(),
                            Optional.empty()))
                    .orRefuse();
        }
    }

    private static boolean isHeld(ShelfLine line) {
        return Stream.concat(line.lot().stream(), line.possible().stream()).anyMatch(Lot::held);
    }

    /** What a safety notice holds is laid aside, whatever shelf was meant. */
    private ShelfId quarantine(ShelfId meant) {
        var site = shelves.find(meant).orElseThrow().site();
        return shelves.one(site, ShelfKind.QUARANTINE).orElseThrow().id();
    }

    private Step step(
            ShelfId transfer,
            String deed,
            ProductId product,
            ShelfId from,
            ShelfId to,
            Optional<LotId> lot,
            int quantity,
            Optional<UnitCost> cost) {
        var name = transfer.value() + " " + deed;
        return new Step(
                UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)),
                product,
                from,
                to,
                lot.orElse(null),
                null,
                quantity,
                null,
                null,
                null,
                cost.orElse(null),
                clock.instant());
    }
}
