package org.espalier.stock;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Component;

/**
 * A stocked hospital for a test: a store and a tray, with a plate whose lots are known and a screw whose lots are
 * mixed.
 */
@Component
public class TestStock {

    public static final Currency EURO = Currency.getInstance("EUR");

    private final TestNetwork network;
    private final CatalogueService catalogue;
    private final StockService stock;
    private final UseService uses;
    private final CountService counts;
    private final StockTransferService transfers;
    private final ReservationService reservations;
    private final Ids ids;

    TestStock(
            TestNetwork network,
            CatalogueService catalogue,
            StockService stock,
            UseService uses,
            CountService counts,
            StockTransferService transfers,
            ReservationService reservations,
            Ids ids) {
        this.network = network;
        this.catalogue = catalogue;
        this.stock = stock;
        this.uses = uses;
        this.counts = counts;
        this.transfers = transfers;
        this.reservations = reservations;
        this.ids = ids;
    }

    /** A hospital's stock and its keeper. */
    public record Stocked(UUID keeper, SiteId site, ShelfId store, ShelfId tray, Product plate, Product screw) {}

    /** What the methods of the stock are asked with. */
    public record Arranged(Map<Class<?>, Object> types, Map<String, Object[]> arguments) {}

    /**
     * A hospital with a store, a tray and a keeper, and two products of its own in the catalogue; nothing lies there
     * yet.
     */
    public Stocked empty(SiteId site) {
        var keeper = network.staff(site.value(), "STOREKEEPER");
        var number = ids.next().toString().substring(32);
        return network.as(
                keeper,
                () -> new Stocked(
                        keeper,
                        site,
                        stock.addShelf(site, new ShelfData(ShelfKind.STORE, "Store " + number, null, null)),
                        stock.addShelf(site, new ShelfData(ShelfKind.TRAY, "Knee tray " + number, null, null)),
                        catalogue.add(ProductData.of(ProductKind.PLATE, "Invented plate", reference())),
                        catalogue.add(ProductData.of(ProductKind.SCREW, "Invented screw", reference()))));
    }

    public <T> T as(Stocked stocked, Supplier<T> work) {
        return network.as(stocked.keeper(), work);
    }

    /** So many pieces of a lot come in, at ten euro each. */
    public Lot arrive(Stocked stocked, Product product, ShelfId to, String lot, LocalDate expires, int quantity) {
        var arrival = new Arrival(
                ids.next(),
                product.id(),
                Optional.of(lot),
                Optional.of(expires),
                quantity,
                to,
                Optional.of(new UnitCost(BigDecimal.TEN, EURO)));
        return as(stocked, () -> {
            stock.receive(arrival);
            return catalogue.lotOf(product.id(), lot, expires);
        });
    }

    /** Another product of the catalogue. */
    public Product product(Stocked stocked, ProductKind kind) {
        return as(stocked, () -> catalogue.add(ProductData.of(kind, "Invented product", reference())));
    }

    private String reference() {
        return "T-" + ids.next();
    }

    /** Stocks the hospital and says with what each method can be asked about it. */
    public Arranged arrange(SiteId site) {
        var stocked = empty(site);
        var far = LocalDate.of(2040, 1, 31);
        var lot = arrive(stocked, stocked.plate(), stocked.store(), "A-1", far, 6);
        arrive(stocked, stocked.screw(), stocked.tray(), "B-1", far, 4);
        arrive(stocked, stocked.screw(), stocked.tray(), "B-2", far, 4);
        var surgeon = network.staff(site.value(), "SURGEON");
        var holder = ids.next();
        var use = new Use(ids.next(), stocked.store(), stocked.plate().id(), Optional.of(lot.id()), 1, holder);
        var piece = new Use(ids.next(), stocked.store(), stocked.plate().id(), Optional.of(lot.id()), 1, holder);
        var out = new Explant(
                ids.next(), site, stocked.plate().id(), List.of(lot.id()), 1, holder, Explant.Fate.ANALYSIS);
        network.as(surgeon, () -> {
            uses.use(piece);
            uses.explant(out);
            return uses.use(use);
        });
        var shelf = as(stocked, () -> stock.shelf(stocked.store())).orElseThrow();
        var empty = as(stocked, () -> {
            var id = stock.addShelf(site, new ShelfData(ShelfKind.STORE, "Spare", null, null));
            return stock.shelf(id).orElseThrow();
        });
        var moved = new java.util.HashMap<>(moves(stocked, lot, shelf, empty, use));
        moved.putAll(looks(stocked, lot));
        return new Arranged(
                Map.of(
                        ProductId.class, stocked.plate().id(),
                        LotId.class, lot.id(),
                        ShelfId.class, stocked.store(),
                        OrderRule.class, OrderRule.DEFAULT,
                        ProductData.class, ProductData.of(ProductKind.WIRE, "Invented wire", reference()),
                        ProductCode.class, new ProductCode(ProductCode.Scheme.GTIN, "09506000134352"),
                        Product.class, stocked.plate(),
                        Optional.class, Optional.empty(),
                        Shelf.class, empty,
                        ShelfData.class, new ShelfData(ShelfKind.STORE, "Other store", null, null)),
                moved);
    }

    private Map<String, Object[]> moves(Stocked stocked, Lot lot, Shelf shelf, Shelf empty, Use use) {
        var far = LocalDate.of(2040, 1, 31);
        var site = stocked.site();
        var holder = use.holder();
        var arrived = as(stocked, () -> stock.latest(site)).get(1);
        return Map.ofEntries(
                Map.entry("StockService.find", new Object[] {stocked.store(), ""}),
                Map.entry("StockService.sterilise", new Object[] {stocked.tray()}),
                Map.entry("StockService.trayIsBack", new Object[] {stocked.tray()}),
                Map.entry(
                        "StockService.changeShelf",
                        new Object[] {shelf, new ShelfData(ShelfKind.STORE, "Back store", null, null)}),
                Map.entry("StockService.move", new Object[] {
                    new Move(
                            ids.next(),
                            stocked.plate().id(),
                            Optional.of(lot.id()),
                            1,
                            stocked.store(),
                            empty.id(),
                            Optional.empty())
                }),
                Map.entry("StockService.receive", new Object[] {
                    new Arrival(
                            ids.next(),
                            stocked.plate().id(),
                            Optional.of("A-9"),
                            Optional.of(far),
                            1,
                            stocked.store(),
                            Optional.empty())
                }),
                Map.entry("StockService.takeBack", new Object[] {arrived, ids.next(), "miscounted"}),
                Map.entry("UseService.use", new Object[] {
                    new Use(ids.next(), stocked.store(), stocked.plate().id(), Optional.of(lot.id()), 1, holder)
                }),
                Map.entry("UseService.explant", new Object[] {
                    new Explant(
                            ids.next(), site, stocked.plate().id(), List.of(lot.id()), 1, holder, Explant.Fate.DISPOSED)
                }),
                Map.entry("UseService.takeBack", new Object[] {use.movement(), ids.next(), "not used"}),
                Map.entry("UseService.useFromOutside", new Object[] {
                    new UseService.Outside(ids.next(), site, stocked.plate().id(), Optional.of(lot.id()), holder),
                    "on loan"
                }),
                Map.entry("UseService.usedFor", new Object[] {holder}),
                Map.entry("UseService.takenOutBy", new Object[] {holder}),
                Map.entry("UseService.ofHolder", new Object[] {holder}),
                Map.entry("LabelService.readTogether", new Object[] {List.of("(01)09506000134352(10)A-1")}));
    }

    /**
     * A sheet closed and another open, goods on their way out and in, a reservation, and something that expires soon.
     */
    private Map<String, Object[]> looks(Stocked stocked, Lot lot) {
        var site = stocked.site();
        arrive(stocked, stocked.plate(), stocked.store(), "A-soon", LocalDate.of(2026, 12, 31), 1);
        var sheet = as(stocked, () -> {
            counts.close(counts.open(stocked.store()).id());
            return counts.open(stocked.store());
        });
        var other = empty(new SiteId(network.site()));
        var theirs = arrive(other, other.plate(), other.store(), "C-1", LocalDate.of(2040, 1, 31), 2);
        var out = send(stocked, other, stocked.plate(), lot);
        var in = send(other, stocked, other.plate(), theirs);
        var reservation = new Reservation(
                ids.next(), site, ids.next(), LocalDate.of(2030, 1, 1), List.of(Need.of(stocked.plate(), 1)));
        as(stocked, () -> {
            reservations.reserve(reservation);
            return reservation;
        });
        var sent =
                new StockTransferService.Sent(stocked.store(), stocked.plate().id(), Optional.of(lot.id()), 1);
        return Map.of(
                "CountService.count", new Object[] {sheet.id(), stocked.plate().id(), Optional.of(lot.id()), 3},
                "CountService.close", new Object[] {sheet.id()},
                "StockTransferService.send", new Object[] {new ShelfId(ids.next()), site, other.site(), List.of(sent)},
                "StockTransferService.receive", new Object[] {in, stocked.store()},
                "StockTransferService.callBack", new Object[] {out, stocked.store()},
                "ReservationService.reserve", new Object[] {reservation},
                "ReservationService.end", new Object[] {reservation.holder()});
    }

    /** One piece of a lot goes from the store of one hospital to another. */
    public ShelfId send(Stocked from, Stocked to, Product product, Lot lot) {
        var transfer = new ShelfId(ids.next());
        var sent = new StockTransferService.Sent(from.store(), product.id(), Optional.of(lot.id()), 1);
        return as(from, () -> {
            transfers.send(transfer, from.site(), to.site(), List.of(sent));
            return transfer;
        });
    }
}
