package org.espalier.cost.ui;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Route;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.Site;
import org.espalier.cost.Allowance;
import org.espalier.cost.Tariff;
import org.espalier.cost.TariffItem;
import org.espalier.cost.TariffService;
import org.espalier.kit.DateText;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** What does each thing cost here, since when and by whose word, and how much of it does an operation take? */
@Route(Urls.COSTS_TARIFFS)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/cost.css")
class TariffsView extends CostPage {

    private static final Comparator<Allowance> ALLOWANCES = Comparator.comparing(
                    (Allowance one) -> one.kind().isPresent())
            .thenComparing(one -> AllowanceForm.name(one.kind()))
            .thenComparing(one -> Texts.of(one.item()));

    private final TariffService tariffs;

    TariffsView(TariffService tariffs, CostSites sites) {
        super(sites, "cost.tariffs");
        this.tariffs = tariffs;
    }

    @Override
    protected void show(Site here, Div body) {
        var today = sites().today(here);
        var all = tariffs.all(here.id());
        var now = all.stream().filter(one -> one.holdsOn(today)).toList();
        var others = all.stream().filter(one -> !one.holdsOn(today)).toList();
        var missing = Stream.of(TariffItem.values())
                .filter(item -> now.stream().noneMatch(one -> one.data().item() == item))
                .map(Texts::of)
                .toList();
        body.add(PageParts.part(Texts.text("cost.tariffs-today", DateText.of(today)), table("cost.tariffs.none", now)));
        if (!missing.isEmpty()) {
            body.add(PageParts.said(Texts.text("cost.tariffs.missing", String.join(", ", missing))));
        }
        body.add(
                PageParts.part(
                        Texts.text("cost.set-one"),
                        PageParts.said(Texts.text("cost.set-one.what")),
                        new TariffForm(
                                today, usual(now), data -> act(() -> tariffs.set(here.id(), data), "cost.set-done"))),
                PageParts.part(
                        Texts.text("cost.allowances"),
                        PageParts.said(Texts.text("cost.allowances.what")),
                        allowances(tariffs.allowances(here.id())),
                        new AllowanceForm(today, one -> act(() -> tariffs.allow(here.id(), one), "cost.agreed-done"))),
                PageParts.part(Texts.text("cost.tariffs-other"), table("cost.tariffs-other.none", others)));
    }

    private static Optional<Currency> usual(List<Tariff> now) {
        return now.stream()
                .flatMap(one -> Stream.ofNullable(one.data().currency()))
                .findFirst();
    }

    private static LineTable<Tariff> table(String nothing, List<Tariff> lines) {
        return new LineTable<Tariff>(nothing)
                .text("cost.item", one -> Texts.of(one.data().item()))
                .number("cost.the-price", CostText::price)
                .text("cost.valid", TariffsView::valid)
                .text(
                        "cost.tax",
                        one -> one.data().item().isShare()
                                ? ""
                                : Texts.of(one.data().tax()))
                .text(
                        "cost.payer",
                        one -> one.data().payer().isEmpty()
                                ? Texts.text("cost.everybody")
                                : one.data().payer())
                .text("cost.source", one -> one.data().source())
                .faded(Tariff::replaced)
                .ordered("cost.ordered.item")
                .with(lines.stream()
                        .sorted(Comparator.comparing(one -> Texts.of(one.data().item())))
                        .toList());
    }

    private static String valid(Tariff one) {
        if (one.replaced()) {
            return Texts.text("cost.replaced", DateText.of(one.data().from()));
        }
        return one.until()
                .map(end ->
                        Texts.text("cost.from-until", DateText.of(one.data().from()), DateText.of(end.minusDays(1))))
                .orElseGet(() -> Texts.text("cost.from", DateText.of(one.data().from())));
    }

    private static LineTable<Allowance> allowances(List<Allowance> lines) {
        return new LineTable<Allowance>("cost.allowances.none")
                .text("cost.operation", one -> AllowanceForm.name(one.kind()))
                .text("cost.item", one -> Texts.of(one.item()))
                .number(
                        "cost.quantity",
                        one -> Texts.text(
                                "cost.so-many." + one.item().unit().name(),
                                CostText.number(one.quantity()),
                                one.quantity()))
                .text("cost.valid", one -> one.until()
                        .map(end ->
                                Texts.text("cost.from-until", DateText.of(one.from()), DateText.of(end.minusDays(1))))
                        .orElseGet(() -> Texts.text("cost.from", DateText.of(one.from()))))
                .ordered("cost.ordered.operation")
                .with(lines.stream().sorted(ALLOWANCES).toList());
    }
}
