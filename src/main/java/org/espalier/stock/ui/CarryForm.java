package org.espalier.stock.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.Site;
import org.espalier.kit.Texts;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.LabelService;
import org.espalier.stock.Lot;
import org.espalier.stock.Move;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfId;
import org.espalier.stock.ShelfLine;
import org.espalier.stock.StockService;
import org.espalier.stock.StockTransferService;

/** Pieces that lie somewhere go to another shelf, or to another hospital. */
final class CarryForm extends Composite<Div> {

    /** Where to: a shelf here, or another hospital. */
    private record Goal(Optional<Shelf> shelf, Optional<Site> hospital) {

        String text() {
            return shelf.map(StockText::of)
                    .orElseGet(() ->
                            Texts.text("stock.send-to", hospital.map(Site::name).orElse("")));
        }
    }

    private final StockPage page;
    private final transient StockService stock;
    private final transient StockTransferService transfers;
    private final Site here;
    private final Map<ShelfId, Shelf> shelves;
    private final ProductPick pick;
    private final Select<ShelfLine> from = new Select<>();
    private final Select<Goal> to = new Select<>();
    private final IntegerField quantity = new IntegerField(Texts.text("stock.pieces"));
    private final TextField why = new TextField(Texts.text("stock.why"));
    private final UUID movement = UUID.randomUUID();

    CarryForm(
            StockPage page,
            StockService stock,
            StockTransferService transfers,
            CatalogueService catalogue,
            LabelService labels,
            Site here) {
        this.page = page;
        this.stock = stock;
        this.transfers = transfers;
        this.here = here;
        shelves = stock.shelves(here.id()).stream().collect(Collectors.toMap(Shelf::id, Function.identity()));
        pick = new ProductPick(catalogue, labels, label -> {}, () -> {});
        pick.onChange(this::lines);
        from.setLabel(Texts.text("stock.taken-from"));
        from.setItemLabelGenerator(this::line);
        from.setErrorMessage(Texts.text("stock.shelf.missing"));
        from.addValueChangeListener(change -> goals());
        to.setLabel(Texts.text("stock.onto"));
        to.setItemLabelGenerator(Goal::text);
        to.setErrorMessage(Texts.text("stock.shelf.missing"));
        quantity.setMin(1);
        quantity.setErrorMessage(Texts.text("stock.pieces.missing"));
        why.setMaxLength(400);
        var fields = new Div(from, quantity, to, why);
        fields.addClassName("form-fields");
        getContent().add(pick, fields, new Button(Texts.text("stock.carry-now"), click -> carry()));
    }

    private String line(ShelfLine line) {
        var shelf = shelves.get(line.shelf());
        return Texts.text(
                "stock.line", shelf == null ? "" : StockText.of(shelf), StockText.lots(line), line.quantity());
    }

    private void lines() {
        var lines =
                pick.value().map(product -> stock.of(here.id(), product.id())).orElse(List.of());
        from.setItems(
                lines.stream().filter(line -> shelves.containsKey(line.shelf())).toList());
        if (lines.size() == 1) {
            from.setValue(lines.getFirst());
        }
    }

    private void goals() {
        var shelf = from.isEmpty() ? null : shelves.get(from.getValue().shelf());
        if (shelf == null) {
            to.setItems(List.of());
            return;
        }
        var here = shelves.values().stream()
                .filter(one -> one.closedOn() == null && shelf.kind().mayPassTo(one.kind()))
                .filter(one -> !one.id().equals(shelf.id()))
                .sorted(Comparator.comparing(Shelf::kind).thenComparing(StockText::of))
                .map(one -> new Goal(Optional.of(one), Optional.empty()));
        var others = shelf.kind().isUsable()
                ? page.sites().others(shelf.site()).stream().map(one -> new Goal(Optional.empty(), Optional.of(one)))
                : Stream.<Goal>empty();
        to.setItems(Stream.concat(here, others).toList());
    }

    private void carry() {
        boolean counted = quantity.getValue() != null && quantity.getValue() > 0;
        quantity.setInvalid(!counted);
        from.setInvalid(from.isEmpty());
        to.setInvalid(to.isEmpty());
        pick.wanted()
                .filter(product -> counted && !from.isEmpty() && !to.isEmpty())
                .ifPresent(product -> page.act(this::go, "stock.carried"));
    }

    private void go() {
        var line = from.getValue();
        var lot = line.lot().map(Lot::id);
        var goal = to.getValue();
        if (goal.hospital().isPresent()) {
            var goods =
                    new StockTransferService.Sent(line.shelf(), line.product().id(), lot, quantity.getValue());
            transfers.send(
                    new ShelfId(movement), here.id(), goal.hospital().get().id(), List.of(goods));
        } else {
            var said = Optional.of(why.getValue().strip()).filter(text -> text.length() > 2);
            stock.move(new Move(
                    movement,
                    line.product().id(),
                    lot,
                    quantity.getValue(),
                    line.shelf(),
                    goal.shelf().orElseThrow().id(),
                    said));
        }
    }
}
