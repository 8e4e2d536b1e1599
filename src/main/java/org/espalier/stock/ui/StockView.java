package org.espalier.stock.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.kit.DateText;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.Coverage;
import org.espalier.stock.Expiring;
import org.espalier.stock.ReservationService;
import org.espalier.stock.ShelfKind;
import org.espalier.stock.ShelfSummary;
import org.espalier.stock.StockOverviewService;
import org.espalier.stock.StockService;
import org.espalier.stock.StockTransferService;

/** What is on which shelf, what expires, what will run short, what is on the way? */
@Route(Urls.STOCK)
@Menu(title = "stock.menu", order = 40)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class StockView extends StockPage {

    private final StockService stock;
    private final StockOverviewService overview;
    private final ReservationService reservations;
    private final StockTransferService transfers;
    private final CurrentStaff currentStaff;

    StockView(
            StockService stock,
            StockOverviewService overview,
            ReservationService reservations,
            StockTransferService transfers,
            StockSites sites,
            CurrentStaff currentStaff) {
        super(sites, "stock.shelves");
        this.stock = stock;
        this.overview = overview;
        this.reservations = reservations;
        this.transfers = transfers;
        this.currentStaff = currentStaff;
    }

    @Override
    protected void show(Site here, Div body) {
        boolean keeps = sites().keeps(here.id());
        if (keeps || currentStaff.has(Role.SURGEON, here.id()) || currentStaff.has(Role.NURSE, here.id())) {
            body.add(PageParts.part(Texts.text("stock.short"), shortages(here)));
        }
        body.add(PageParts.part(Texts.text("stock.on-shelves", here.name()), shelves(here, keeps)));
        if (keeps) {
            body.add(PageParts.part(Texts.text("stock.on-the-way"), new TransferTable(this, stock, transfers, here)));
        }
        body.add(
                PageParts.part(
                        Texts.text("stock.expiring", StockOverviewService.SOON_DAYS),
                        new Paragraph(Texts.text("stock.expiring.then")),
                        expiring(here)),
                PageParts.part(Texts.text("stock.value"), value(here)));
        if (keeps) {
            body.add(PageParts.part(
                    Texts.text("stock.new-shelf"),
                    new ShelfForm(
                            Optional.empty(),
                            sites().today(here.id()),
                            data -> act(() -> stock.addShelf(here.id(), data), "stock.done"))));
        }
        if (keeps) {
            body.add(PageParts.part(Texts.text("stock.books"), books(here)));
        }
        body.add(PageParts.part(
                Texts.text("stock.latest"), new MovementTable(this, stock, here, keeps).with(stock.latest(here.id()))));
    }

    private Component shortages(Site here) {
        var missing = reservations.coverage(here.id()).stream()
                .filter(met -> met.missing() > 0)
                .toList();
        return new LineTable<Coverage.Met>("stock.short.none")
                .ordered("stock.ordered.day")
                .text("stock.operation-on", met -> DateText.of(met.reservation().neededOn()))
                .text("stock.needed", met -> StockText.of(met.need()))
                .count("stock.quantity", met -> met.need().quantity())
                .count("stock.missing", Coverage.Met::missing)
                .with(missing);
    }

    private Component shelves(Site here, boolean keeps) {
        return new LineTable<ShelfSummary>("stock.no-shelves")
                .ordered("stock.ordered.shelves")
                .show("stock.shelf", one -> link(here, one.shelf().id(), StockText.of(one.shelf())))
                .text("stock.kind", one -> Texts.of(one.shelf().kind()))
                .count("stock.products", ShelfSummary::products)
                .count("stock.pieces", ShelfSummary::pieces)
                .show("stock.state", one -> state(one, keeps))
                .with(overview.shelves(here.id()));
    }

    private Component state(ShelfSummary one, boolean keeps) {
        var shelf = one.shelf();
        var state = new Div();
        var owner = shelf.owner();
        var back = shelf.backBy();
        if (owner != null) {
            boolean late = back != null && back.isBefore(sites().today(shelf.site()));
            var lent = new Span(
                    back == null
                            ? Texts.text("stock.owner", owner)
                            : Texts.text(late ? "stock.owner-late" : "stock.owner-back", owner, DateText.of(back)));
            lent.setClassName("harm", late);
            state.add(lent);
        }
        if (shelf.kind() == ShelfKind.TRAY && shelf.sterilising()) {
            state.add(new Span(Texts.text("stock.sterilising")), back(shelf.id(), keeps));
        }
        return state;
    }

    private Component back(org.espalier.stock.ShelfId tray, boolean keeps) {
        var back = link("stock.tray-is-back", () -> act(() -> stock.trayIsBack(tray), "stock.done"));
        back.setVisible(keeps);
        return back;
    }

    private Component expiring(Site here) {
        var today = sites().today(here.id());
        return new LineTable<Expiring>("stock.expiring.none")
                .ordered("stock.ordered.expiry")
                .show("stock.expires", one -> lastDay(one, today))
                .show("stock.product", one -> link(here, one.product()))
                .text("stock.lot", one -> one.lot().number())
                .text("stock.shelf", one -> StockText.of(one.shelf()))
                .count("stock.pieces", Expiring::quantity)
                .count("stock.used-in-a-year", Expiring::usedInAYear)
                .count("stock.left-over", Expiring::leftOver)
                .number("stock.cost", one -> one.cost().map(StockText::of).orElse(""))
                .with(overview.expiring(here.id()));
    }

    private static Component lastDay(Expiring one, LocalDate today) {
        var last = one.lot().expires();
        boolean past = one.lot().isExpiredOn(today);
        var day =
                new Span(last == null ? "" : past ? Texts.text("stock.expired", DateText.of(last)) : DateText.of(last));
        day.setClassName("harm", past);
        return day;
    }

    private Component value(Site here) {
        var lines = overview.value(here.id());
        return new LineTable<org.espalier.stock.StockValue>("stock.value.none")
                .text("stock.kind", one -> Texts.of(one.kind()))
                .count("stock.pieces", org.espalier.stock.StockValue::pieces)
                .number(
                        "stock.worth",
                        one -> Texts.text("stock.money", one.currency().getCurrencyCode(), one.amount()))
                .with(lines);
    }

    private Component books(Site here) {
        var told = new Paragraph(Texts.text("stock.books.what"));
        var check = new Button(Texts.text("stock.books.check"), click -> say(books(stock.check(here.id())), false));
        var rebuild = new Button(
                Texts.text("stock.books.rebuild"), click -> act(() -> stock.rebuild(here.id()), "stock.books.rebuilt"));
        var actions = new Div(check, rebuild);
        actions.addClassName("actions");
        return new Div(told, actions);
    }

    private static String books(List<String> differences) {
        return differences.isEmpty()
                ? Texts.text("stock.books.agree")
                : Texts.text(
                        "stock.books.differ",
                        differences.size(),
                        differences.stream().limit(5).collect(Collectors.joining("; ")));
    }
}
