package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.followup.Limits;
import org.espalier.followup.SignedLimits;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;

/** All limits that were signed at a hospital, the last first: by whom, since when, why, and what they changed. */
final class LimitsHistory extends Composite<Section> {

    private final OrderedList list = new OrderedList();

    LimitsHistory() {
        list.addClassName("steps");
        getContent().addClassName("limits-history");
        var order = new Paragraph(Texts.text("followup.limits.history.order"));
        order.addClassName("small");
        getContent().add(new H3(Texts.text("followup.limits.history")), list, order);
    }

    void show(List<SignedLimits> signed) {
        list.removeAll();
        setVisible(!signed.isEmpty());
        for (int i = 0; i < signed.size(); i++) {
            var before = i + 1 < signed.size() ? signed.get(i + 1).limits() : Limits.DEFAULTS;
            var after = i == 0 ? Optional.<SignedLimits>empty() : Optional.of(signed.get(i - 1));
            list.add(item(signed.get(i), before, after));
        }
    }

    private static ListItem item(SignedLimits one, Limits before, Optional<SignedLimits> after) {
        var held = new Span(after.map(later ->
                        Texts.text("followup.limits.held", DateText.of(one.signedOn()), DateText.of(later.signedOn())))
                .orElseGet(() -> Texts.text("followup.limits.holds", DateText.of(one.signedOn()))));
        held.addClassName("day");
        var by = new Span(Texts.text("followup.limits.by", LimitsForm.signer(one), one.reason()));
        var changes = new UnorderedList();
        changes(before, one.limits()).map(ListItem::new).forEach(changes::add);
        return new ListItem(held, by, changes);
    }

    private static Stream<String> changes(Limits before, Limits after) {
        var changed = Arrays.stream(Limits.class.getRecordComponents())
                .filter(limit -> LimitsForm.value(limit, before) != LimitsForm.value(limit, after))
                .map(limit -> Texts.text(
                        "followup.limits.change",
                        Texts.text("followup.limit." + limit.getName()),
                        LimitsForm.value(limit, after),
                        LimitsForm.value(limit, before)))
                .toList();
        return changed.isEmpty() ? Stream.of(Texts.text("followup.limits.no-change")) : changed.stream();
    }
}
