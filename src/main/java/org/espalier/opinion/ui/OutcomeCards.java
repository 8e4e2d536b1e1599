package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.DescriptionList.Description;
import com.vaadin.flow.component.html.DescriptionList.Term;
import com.vaadin.flow.component.html.Div;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.Advice;
import org.espalier.opinion.Fared;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.Outcome;
import org.espalier.opinion.Sureness;

/** What was advised beside what was decided and what came of it, a card for each piece of advice. */
class OutcomeCards extends Composite<Div> {

    private OutcomeCards() {
        getContent().addClassName("opinion-outcomes");
    }

    /** The advice that stands of everybody in a closed thread. */
    static OutcomeCards of(OpinionThread closed, Advice decided) {
        var cards = new OutcomeCards();
        closed.opinions().stream().filter(one -> !one.superseded()).forEach(one -> {
            var data = one.data();
            var advised = advised(data.advice(), data.place(), data.due(), data.sure());
            cards.card(one.name(), advised, decided, closed.outcomes());
        });
        return cards;
    }

    /** The reader's own advice. */
    static OutcomeCards of(List<Fared> fared, ZoneId zone) {
        var cards = new OutcomeCards();
        fared.forEach(one -> cards.card(
                Texts.text("opinion.given", Parts.day(one.givenAt(), zone)),
                advised(one.advice(), one.place(), one.due(), one.sure()),
                one.decided(),
                one.outcomes()));
        return cards;
    }

    private static String advised(Advice advice, String place, String due, Sureness sure) {
        return Stream.of(Texts.text("opinion.beside.sure", Texts.of(advice), Texts.of(sure)), place, due)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("\n"));
    }

    private void card(String name, String advised, Advice decided, List<Outcome> outcomes) {
        var beside = new DescriptionList();
        beside.add(pair(Texts.text("opinion.beside.advised"), advised));
        beside.add(pair(Texts.text("opinion.beside.decided"), Texts.of(decided)));
        for (var horizon : Outcome.Horizon.values()) {
            beside.add(pair(Texts.of(horizon), outcome(outcomes, horizon)));
        }
        getContent().add(PageParts.paragraph("name", name), beside);
    }

    private static Div pair(String name, String value) {
        return new Div(new Term(name), new Description(value));
    }

    private static String outcome(List<Outcome> outcomes, Outcome.Horizon horizon) {
        return outcomes.stream()
                .filter(one -> one.horizon() == horizon)
                .findFirst()
                .map(known -> Texts.text(
                        "opinion.beside.outcome", Texts.of(known.done()), Texts.of(known.result()), known.months()))
                .orElseGet(() -> Texts.text("opinion.beside.waiting"));
    }
}
