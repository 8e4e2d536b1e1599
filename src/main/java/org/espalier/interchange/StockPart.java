package org.espalier.interchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.stock.Arrival;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Lot;
import org.espalier.stock.Product;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfLine;
import org.espalier.stock.StockRefusal;
import org.espalier.stock.StockService;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * What lies on the shelves: each row so many pieces of a product, of one lot or of mixed ones, as they come in. A line
 * that is there already is left as it is; where its number differs, the shelf is to be counted.
 */
@Component
@Order(4)
class StockPart implements ClinicPart {

    private final StockService stock;
    private final CatalogueService catalogue;

    StockPart(StockService stock, CatalogueService catalogue) {
        this.stock = stock;
        this.catalogue = catalogue;
    }

    @Override
    public void take(Taking taking) {
        var rows = taking.rows(ClinicFile.STOCK);
        if (rows.isEmpty()) {
            return;
        }
        Map<String, Shelf> shelves = usable(taking.site()).stream()
                .collect(Collectors.toMap(StockCells::name, shelf -> shelf, (one, other) -> one, HashMap::new));
        Set<String> seen = new HashSet<>();
        rows.forEach(row -> taking.take(row, () -> take(taking, row, shelves, seen)));
    }

    private Effect take(Taking taking, ClinicRow row, Map<String, Shelf> shelves, Set<String> seen) {
        var said = StockCells.read(row);
        if (said.isEmpty()) {
            return Effect.KNOWN;
        }
        var line = said.get();
        if (!seen.add(line.key())) {
            throw new RowRefused("lot", FileReason.SHELF_LINE_TWICE);
        }
        try {
            return take(taking, line, shelves);
        } catch (StockRefusal refusal) {
            throw new RowRefused("pieces", FileReason.REFUSED, refusal.text());
        }
    }

    private Effect take(Taking taking, StockCells line, Map<String, Shelf> shelves) {
        var shelf = shelves.get(line.shelf().name());
        if (shelf == null) {
            var id = stock.addShelf(taking.site(), line.shelf());
            shelf = stock.shelf(id).orElseThrow();
            shelves.put(line.shelf().name(), shelf);
        } else if (shelf.kind() != line.shelf().kind()) {
            throw new RowRefused("shelf_kind", FileReason.SHELF_OF_OTHER_KIND, Words.of(shelf.kind()));
        }
        var product = product(line);
        var there = stock.on(shelf.id()).stream()
                .filter(one ->
                        one.product().id().equals(product.id()) && lots(one).equals(line.lotNumbers()))
                .findFirst();
        if (there.isPresent()) {
            return same(there.get(), line);
        }
        receive(shelf, product, line);
        return Effect.NEW;
    }

    private static Effect same(ShelfLine there, StockCells line) {
        if (there.quantity() != line.pieces()) {
            throw new RowRefused("pieces", FileReason.SHELF_HOLDS_OTHERWISE, there.quantity(), line.pieces());
        }
        return Effect.KNOWN;
    }

    private Product product(StockCells line) {
        return catalogue.search(line.product().reference(), Optional.empty()).stream()
                .filter(known ->
                        known.data().reference().equalsIgnoreCase(line.product().reference()))
                .findFirst()
                .map(known -> demandSame(known, line))
                .orElseGet(() -> catalogue.add(line.product()));
    }

    private static Product demandSame(Product known, StockCells line) {
        if (known.data().kind() != line.product().kind()
                || known.data().traced() != line.product().traced()) {
            throw new RowRefused(
                    "reference", FileReason.OTHER_PRODUCT, known.data().name());
        }
        return known;
    }

    /**
     * Of mixed lots one piece each is taken for certain and the rest with the first: the lots are known, the shares
     * not.
     */
    private void receive(Shelf shelf, Product product, StockCells line) {
        var lots = line.lots();
        int rest = line.pieces() - Math.max(0, lots.size() - 1);
        if (lots.isEmpty()) {
            stock.receive(arrival(shelf, product, line, Optional.empty(), line.pieces()));
        }
        for (var lot : lots) {
            int pieces = lot.equals(lots.getFirst()) ? rest : 1;
            stock.receive(arrival(shelf, product, line, Optional.of(lot), pieces));
        }
    }

    private static Arrival arrival(
            Shelf shelf, Product product, StockCells line, Optional<StockCells.SaidLot> lot, int pieces) {
        return new Arrival(
                StableIds.of(
                        shelf.id().value(),
                        "stock",
                        product.id().value().toString(),
                        lot.map(StockCells.SaidLot::number).orElse(""),
                        line.key()),
                product.id(),
                lot.map(StockCells.SaidLot::number),
                lot.flatMap(StockCells.SaidLot::expires),
                pieces,
                shelf.id(),
                Optional.empty());
    }

    private static List<String> lots(ShelfLine line) {
        return all(line).map(Lot::number).toList();
    }

    private static Stream<Lot> all(ShelfLine line) {
        return Stream.concat(line.lot().stream(), line.lot().isPresent() ? Stream.empty() : line.possible().stream())
                .sorted(Comparator.comparing(Lot::number));
    }

    private List<Shelf> usable(SiteId site) {
        return stock.shelves(site).stream()
                .filter(shelf -> shelf.kind().isUsable() && shelf.closedOn() == null)
                .toList();
    }

    @Override
    public Map<ClinicFile, List<List<String>>> rows(Giving giving) {
        List<List<String>> rows = new ArrayList<>();
        for (var shelf : usable(giving.site())) {
            stock.on(shelf.id()).stream()
                    .filter(line -> line.quantity() > 0)
                    .forEach(line ->
                            rows.add(StockCells.row(shelf, line, all(line).toList())));
        }
        rows.sort(Comparator.comparing((List<String> row) -> String.join("\u0001", row)));
        return Map.of(ClinicFile.STOCK, rows);
    }
}
