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

/** A stocked hospital for a test: a store and a tray, with a plate whose lots are known and a screw whose lots are mixed. */
@Component
public class TestStock {

    public static final Currency EURO = Currency.getInstance("EUR");

    private final TestNetwork network;
    private final CatalogueService catalogue;
    private final StockService stock;
    private final UseService uses;
    private final Ids ids;

    TestStock(TestNetwork network, CatalogueService catalogue, StockService stock, UseService uses, Ids ids) {
        this.network = network;
        this.catalogue = catalogue;
        this.stock = stock;
        this.uses = uses;
        this.ids = ids;
    }

    /** A hospital's stock and its keeper. */
    public record Stocked(UUID keeper, SiteId site, ShelfId store, ShelfId tray, Product plate, Product screw) {}

    /** What the methods of the stock are asked with. */
    public record Arranged(Map<Class<?>, Object> types, Map<String, Object[]> arguments) {}

    /** A hospital with a store, a tray and a keeper, and two products of its own in the catalogue; nothing lies there yet. */
    public Stocked empty(SiteId site) {
        var keeper = network.staff(site.value(), "STOREKEEPER");
        return network.as(
                keeper,
                () -> new Stocked(
                        keeper,
                        site,
                        stock.addShelf(site, new ShelfData(ShelfKind.STORE, "Store", null, null)),
                        stock.addShelf(site, new ShelfData(ShelfKind.TRAY, "Knee tray", null, null)),
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
        network.as(surgeon, () -> uses.use(use));
        var shelf = as(stocked, () -> stock.shelf(stocked.store())).orElseThrow();
        var empty = as(stocked, () -> {
            var id = stock.addShelf(site, new ShelfData(ShelfKind.STORE, "Spare", null, null));
            return stock.shelf(id).orElseThrow();
        });
        var arrived = as(stocked, () -> stock.latest(site)).get(1);
        return new Arranged(
                Map.of(
                        ProductId.class, stocked.plate().id(),
                        LotId.class, lot.id(),
                        ShelfId.class, stocked.store(),
                        ProductData.class, ProductData.of(ProductKind.WIRE, "Invented wire", reference()),
                        ProductCode.class, new ProductCode(ProductCode.Scheme.GTIN, "09506000134352"),
                        Product.class, stocked.plate(),
                        Optional.class, Optional.empty(),
                        Shelf.class, empty,
                        ShelfData.class, new ShelfData(ShelfKind.STORE, "Other store", null, null)),
                Map.ofEntries(
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
                                    ids.next(),
                                    site,
                                    stocked.plate().id(),
                                    List.of(lot.id()),
                                    1,
                                    holder,
                                    Explant.Fate.DISPOSED)
                        }),
                        Map.entry("UseService.takeBack", new Object[] {use.movement(), ids.next(), "not used"}),
                        Map.entry("UseService.ofHolder", new Object[] {holder})));
    }
}
