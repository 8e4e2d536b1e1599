package org.espalier.cost.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.espalier.access.Site;
import org.espalier.cost.Charge;
import org.espalier.cost.ChargeService.Booked;
import org.espalier.cost.CostSum;
import org.espalier.cost.Priced;
import org.espalier.cost.TariffItem;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** Charges one under the other, and what they add up to by item. */
final class ChargeTable extends Composite<Div> {

    private ChargeTable(LineTable<Booked> table, List<Booked> charges) {
        table.text("cost.item", one -> Texts.of(one.charge().line().item()))
                .text("cost.rule", one -> Texts.of(one.charge().line().rule()))
                .text("cost.side", one -> CostText.side(one.charge().line()))
                .number(
                        "cost.quantity",
                        one -> CostText.number(one.charge().line().quantity()))
                .number("cost.unit-price", one -> CostText.unit(one.charge().line()))
                .number(
                        "cost.amount",
                        one -> CostText.amount(one.charge().line().priced()))
                .number(
                        "cost.overhead",
                        one -> CostText.overhead(one.charge().line().priced()))
                .text("cost.what-became", one -> CostText.state(one.charge()))
                .faded(one -> !one.charge().stands());
        getContent().add(table.with(charges));
    }

    /** Those of a hospital, each with the way to its account. */
    static ChargeTable of(Site here, List<Booked> charges) {
        return new ChargeTable(
                days("cost.charges.none")
                        .show(
                                "cost.account",
                                one -> new Anchor(
                                        Urls.costAccount(
                                                here.code(), one.pseudonym().text()),
                                        one.pseudonym().text())),
                charges);
    }

    /** Those of one account, each with what can be done to it. */
    static ChargeTable of(List<Booked> charges, Function<Charge, Component> deed) {
        return new ChargeTable(days("cost.account.none").show("cost.deed", one -> deed.apply(one.charge())), charges);
    }

    private static LineTable<Booked> days(String nothing) {
        return new LineTable<Booked>(nothing)
                .text("cost.day", one -> CostText.days(one.charge().line()));
    }

    /** What those that stand add up to, by item, overheads in each. */
    static Component sums(List<Charge> charges) {
        Map<TariffItem, CostSum> byItem = new EnumMap<>(TariffItem.class);
        charges.stream()
                .filter(Charge::stands)
                .forEach(charge -> byItem.merge(
                        charge.line().item(), CostSum.of(charge.line().priced().map(Priced::total)), CostSum::plus));
        var total = byItem.values().stream().reduce(CostSum.NOTHING, CostSum::plus);
        return new Div(
                new LineTable<Map.Entry<TariffItem, CostSum>>("cost.charges.none")
                        .text("cost.item", one -> Texts.of(one.getKey()))
                        .number("cost.total", one -> CostText.of(one.getValue()))
                        .with(List.copyOf(byItem.entrySet())),
                PageParts.said(Texts.text("cost.all-together", CostText.of(total))));
    }
}
