package org.espalier.opinion.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.espalier.kit.Texts;
import org.espalier.opinion.FactKind;
import org.espalier.opinion.FactSheet;
import org.espalier.opinion.ShowableFact;

/** Which facts are shown, each in the words in which colleagues will read it. */
class FactPick extends Composite<Div> {

    private static final int LONG = 6;

    private final Set<UUID> chosen = new HashSet<>();

    FactPick(List<ShowableFact> facts, Set<UUID> chosen, Runnable changed) {
        this.chosen.addAll(chosen);
        getContent().addClassName("fact-pick");
        facts.forEach(fact -> {
            var box =
                    new Checkbox(Parts.atMonth(fact.sheet().heading(), fact.months()), chosen.contains(fact.source()));
            if (fact.kind() == FactKind.CHILD) {
                box.setValue(true);
                box.setReadOnly(true);
                box.setHelperText(Texts.text("opinion.child.always"));
            }
            box.addValueChangeListener(change -> {
                this.chosen.remove(fact.source());
                if (change.getValue()) {
                    this.chosen.add(fact.source());
                }
                changed.run();
            });
            getContent().add(new Div(box, words(fact.sheet())));
        });
    }

    /** Long ones are folded. */
    private static Component words(FactSheet sheet) {
        int lines = sheet.lines().size();
        return lines <= LONG
                ? new SheetLines(sheet)
                : new Details(Texts.text("opinion.fact.words", lines), new SheetLines(sheet));
    }

    Set<UUID> chosen() {
        return chosen;
    }
}
