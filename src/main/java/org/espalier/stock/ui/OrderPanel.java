package org.espalier.stock.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.NumberField;
import java.util.Map;
import java.util.stream.Collectors;
import org.espalier.access.Site;
import org.espalier.kit.LineTable;
import org.espalier.kit.Texts;
import org.espalier.stock.OrderProposal;
import org.espalier.stock.OrderRule;
import org.espalier.stock.OrderService;

/** What to order for a lead time and a service level, with the arithmetic of each line. */
final class OrderPanel extends Composite<Div> {

    private static final double PERCENT = 100;

    private final transient OrderService orders;
    private final Site here;
    private final IntegerField days = new IntegerField(Texts.text("stock.lead-days"));
    private final NumberField service = new NumberField(Texts.text("stock.service"));
    private final Div lines = new Div();

    OrderPanel(OrderService orders, Site here) {
        this.orders = orders;
        this.here = here;
        days.setValue(OrderRule.DEFAULT.leadDays());
        service.setValue(OrderRule.DEFAULT.service() * PERCENT);
        days.setErrorMessage(Texts.text("stock.order.days"));
        days.setManualValidation(true);
        service.setManualValidation(true);
        service.setErrorMessage(Texts.text("stock.order.service"));
        var fields = new Div(days, service);
        fields.addClassName("form-fields");
        getContent()
                .add(
                        new Paragraph(Texts.text("stock.orders.how")),
                        fields,
                        new Button(Texts.text("stock.order.show"), click -> show()),
                        lines);
        show();
    }

    private void show() {
        days.setInvalid(days.getValue() == null || days.getValue() < 1 || days.getValue() > 365);
        service.setInvalid(service.getValue() == null || service.getValue() < 50 || service.getValue() > 99.9);
        if (days.isInvalid() || service.isInvalid()) {
            return;
        }
        var rule = new OrderRule(days.getValue(), service.getValue() / PERCENT);
        lines.removeAll();
        lines.add(new LineTable<OrderProposal>("stock.orders.none")
                .ordered("stock.ordered.products")
                .show("stock.product", one -> StockPage.link(here, one.demand().product()))
                .count("stock.order", OrderProposal::order)
                .text("stock.sizes", OrderPanel::sizes)
                .text("stock.note", one -> arithmetic(one, rule))
                .with(orders.proposals(here.id(), rule)));
    }

    private static String arithmetic(OrderProposal one, OrderRule rule) {
        return Texts.text(
                "stock.order.why",
                one.demand().operations(),
                one.inLeadTime(),
                rule.leadDays(),
                one.mean(),
                rule.service() * PERCENT,
                one.level(),
                one.demand().usable(),
                one.demand().onTheWay(),
                one.sufficient() * PERCENT);
    }

    private static String sizes(OrderProposal one) {
        return one.demand().operationsBySize().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(size -> Texts.text("stock.size-of-operation", size.getValue(), size.getKey()))
                .collect(Collectors.joining(", "));
    }
}
