package org.espalier.opinion.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.opinion.Advice;
import org.espalier.opinion.Fared;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.Outcome;
import org.espalier.opinion.Sureness;

/** What was advised beside what was decided and what came of it, a row for each piece of advice. */
class OutcomeTable extends Composite<Div> {

    private final NativeTable table = new NativeTable();

    private OutcomeTable(String name, String first) {
        var head = new NativeTableRow();
        Stream.of(
                        Texts.text(first),
                        Texts.text("opinion.beside.advised"),
                        Texts.text("opinion.beside.decided"),
                        Texts.of(Outcome.Horizon.YEAR),
                        Texts.of(Outcome.Horizon.MATURITY))
                .forEach(text -> head.add(heading(text, "col")));
        table.add(head);
        getContent().addClassName("readings");
        getContent().add(table);
        getContent().getElement().setAttribute("tabindex", "0");
        getContent().getElement().setAttribute("role", "group");
        getContent().getElement().setAttribute("aria-label", Texts.text(name));
    }

    /** The advice that stands of everybody in a closed thread. */
    static OutcomeTable of(OpinionThread closed, Advice decided) {
        var beside = new OutcomeTable("opinion.beside", "opinion.beside.colleague");
        closed.opinions().stream().filter(one -> !one.superseded()).forEach(one -> {
            var data = one.data();
            beside.row(
                    one.name(),
                    advised(data.advice(), data.place(), data.due(), data.sure()),
                    decided,
                    closed.outcomes());
        });
        return beside;
    }

    /** The reader's own advice. */
    static OutcomeTable of(List<Fared> fared, ZoneId zone) {
        var beside = new OutcomeTable("opinion.beside.mine", "opinion.beside.given");
        fared.forEach(one -> beside.row(
                Parts.day(one.givenAt(), zone),
                advised(one.advice(), one.place(), one.due(), one.sure()),
                one.decided(),
                one.outcomes()));
        return beside;
    }

    private static String advised(Advice advice, String place, String due, Sureness sure) {
        return Stream.of(Texts.text("opinion.beside.sure", Texts.of(advice), Texts.of(sure)), place, due)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("\n"));
    }

    private void row(String first, String advised, Advice decided, List<Outcome> outcomes) {
        var row = new NativeTableRow(
                heading(first, "row"), new NativeTableCell(advised), new NativeTableCell(Texts.of(decided)));
        for (var horizon : Outcome.Horizon.values()) {
            row.add(new NativeTableCell(outcome(
                    outcomes.stream().filter(one -> one.horizon() == horizon).findFirst())));
        }
        table.add(row);
    }

    private static String outcome(Optional<Outcome> outcome) {
        return outcome.map(known -> Texts.text(
                        "opinion.beside.outcome", Texts.of(known.done()), Texts.of(known.result()), known.months()))
                .orElseGet(() -> Texts.text("opinion.beside.waiting"));
    }

    private static Component heading(String text, String scope) {
        var heading = new NativeTableHeaderCell(text);
        heading.getElement().setAttribute("scope", scope);
        return heading;
    }
}
