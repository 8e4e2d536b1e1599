package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.espalier.kit.Texts;
import org.espalier.opinion.AskOutcome;
import org.espalier.opinion.FactKind;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.ShownFact;
import org.espalier.opinion.ThreadId;

/**
 * The frozen facts, kind by kind; numbers of readings stay folded, so that a film can be read without them, and long
 * comparisons, so that the rest is seen.
 */
class FactsPart extends Composite<Section> {

    private static final Set<FactKind> FOLDED = EnumSet.of(FactKind.READING, FactKind.COMPARISON);

    private final ThreadId thread;
    private final ThreadServices services;
    private final Runnable changed;
    private final Div list = new Div();
    private final Div more = new Div();
    private int shown = -1;

    FactsPart(ThreadId thread, ThreadServices services, Runnable changed) {
        this.thread = thread;
        this.services = services;
        this.changed = changed;
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("opinion.facts")), list, more);
    }

    void show(OpinionThread open) {
        if (shown != open.facts().size()) {
            shown = open.facts().size();
            list.removeAll();
            open.facts().forEach(fact -> list.add(details(fact)));
        }
        boolean mayAdd = open.mayLead() && open.closing().isEmpty();
        if (mayAdd && more.getComponentCount() == 0) {
            more.add(new Button(Texts.text("opinion.add"), click -> choose()));
        } else if (!mayAdd) {
            more.removeAll();
        }
    }

    private static Details details(ShownFact fact) {
        var details = new Details(Parts.atMonth(fact.sheet().heading(), fact.months()), new SheetLines(fact.sheet()));
        details.setOpened(!FOLDED.contains(fact.kind()));
        return details;
    }

    /** What is not shown yet, to be chosen from. */
    private void choose() {
        more.removeAll();
        services.asks().addable(thread).ifPresent(addable -> {
            var films = new FilmPick(addable.films(), addable.pictures(), List.of(), Map.of(), Set.of(), () -> {});
            var facts = new FactPick(
                    addable.facts().stream()
                            .filter(fact -> fact.kind() != FactKind.CHILD)
                            .toList(),
                    Set.of(),
                    () -> {});
            var answer = new Div();
            answer.getElement().setAttribute("role", "alert");
            var add = new Button(Texts.text("opinion.add.these"), click -> {
                if (!films.isChecked()) {
                    answer.setText(Texts.text("opinion.not-checked"));
                } else if (services.asks().add(thread, films.chosenFilms(), films.chosenPictures(), facts.chosen())
                        instanceof AskOutcome.Refused(var reason)) {
                    answer.setText(Texts.of(reason));
                } else {
                    more.removeAll();
                    changed.run();
                }
            });
            more.add(films, facts, answer, Parts.actions(add));
        });
    }
}
