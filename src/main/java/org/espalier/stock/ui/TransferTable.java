package org.espalier.stock.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import java.util.function.Consumer;
import org.espalier.access.Site;
import org.espalier.kit.LineTable;
import org.espalier.kit.Texts;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfId;
import org.espalier.stock.StockService;
import org.espalier.stock.StockTransfer;
import org.espalier.stock.StockTransferService;

/** Goods to and from other hospitals, with both signatures. */
final class TransferTable extends Composite<Div> {

    private final StockPage page;
    private final transient StockTransferService transfers;
    private final Site here;
    private final Select<Shelf> onto = new Select<>();

    TransferTable(StockPage page, StockService stock, StockTransferService transfers, Site here) {
        this.page = page;
        this.transfers = transfers;
        this.here = here;
        onto.setLabel(Texts.text("stock.lay-onto"));
        onto.setItems(stock.shelves(here.id()).stream()
                .filter(shelf -> shelf.closedOn() == null && shelf.kind().isUsable())
                .toList());
        onto.setItemLabelGenerator(StockText::of);
        onto.setErrorMessage(Texts.text("stock.shelf.missing"));
        onto.getListDataView().getItems().findFirst().ifPresent(onto::setValue);
        var lines = transfers.of(here.id());
        onto.setVisible(lines.stream().anyMatch(one -> one.receivedBy().isEmpty()));
        getContent().add(onto);
        getContent()
                .add(new LineTable<StockTransfer>("stock.on-the-way.none")
                        .show(
                                "stock.goods",
                                one -> StockPage.link(here, one.shelf(), Texts.text("stock.goods-of", one.pieces())))
                        .text("stock.from-to", this::way)
                        .text(
                                "stock.sent-by",
                                one -> Texts.text(
                                        "stock.signed", one.sentBy(), StockText.at(one.sentAt(), here.zone())))
                        .show("stock.received-by", this::received)
                        .ordered("stock.ordered.transfers")
                        .with(lines));
    }

    private String way(StockTransfer one) {
        return Texts.text(
                "stock.way",
                page.sites().get(one.from()).name(),
                page.sites().get(one.to()).name());
    }

    private Component received(StockTransfer one) {
        var received = new Div();
        one.receivedBy()
                .ifPresent(by -> received.setText(Texts.text(
                        "stock.signed", by, StockText.at(one.receivedAt().orElse(one.sentAt()), here.zone()))));
        if (one.receivedBy().isEmpty() && one.to().equals(here.id())) {
            received.add(StockPage.link(
                    "stock.sign-for", () -> lay(shelf -> transfers.receive(one.shelf(), shelf), "stock.received")));
        } else if (one.receivedBy().isEmpty() && one.pieces() > 0) {
            received.add(StockPage.link(
                    "stock.call-back", () -> lay(shelf -> transfers.callBack(one.shelf(), shelf), "stock.done")));
        }
        return received;
    }

    private void lay(Consumer<ShelfId> deed, String done) {
        onto.setInvalid(onto.isEmpty());
        onto.getOptionalValue().ifPresent(shelf -> page.act(() -> deed.accept(shelf.id()), done));
    }
}
