package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.platform.Ids;
import org.espalier.treatment.Act;
import org.espalier.treatment.Tether;
import org.espalier.treatment.ui.TypedProcedure.TypedAct;

/** The acts of one session: one to begin with, and as many more as were done in the same anaesthetic. */
final class ActForms extends Composite<Div> {

    private final List<ActForm> forms = new ArrayList<>();
    private final Div shown = new Div();
    private final List<Tether> inPlace;
    private final PieceSource source;
    private final Ids ids;
    private final Runnable changed;

    ActForms(List<Tether> inPlace, PieceSource source, Ids ids, Runnable changed) {
        this.inPlace = inPlace;
        this.source = source;
        this.ids = ids;
        this.changed = changed;
        getContent().add(shown, Choices.link(Texts.text("treatment.act.another"), () -> {
            add();
            changed.run();
        }));
        add();
    }

    /** Fills the first empty form, or one more, with what is known beforehand. */
    void take(TypedAct act) {
        var form = forms.stream()
                .filter(one -> one.typed().kind() == null)
                .findFirst()
                .orElseGet(this::add);
        form.fill(act);
        form.awaitScan();
        changed.run();
    }

    /** Shows these and no others. */
    void fill(List<TypedAct> acts) {
        forms.clear();
        shown.removeAll();
        acts.forEach(act -> add().fill(act));
        if (acts.isEmpty()) {
            add();
        }
    }

    List<TypedAct> typed() {
        return forms.stream().map(ActForm::typed).toList();
    }

    void demand(Map<Component, String> missing) {
        forms.forEach(form -> form.demand(missing));
    }

    /** Whether a piece is taken from a shelf. */
    boolean isFromShelf() {
        return typed().stream().flatMap(act -> act.allPieces().stream()).anyMatch(piece -> piece.shelf() != null);
    }

    /** The acts; only when nothing is missing. */
    List<Act> acts() {
        return forms.stream().map(ActForm::act).toList();
    }

    Act act(int place) {
        return forms.get(place).act();
    }

    /** Each act so far in words, in its limb's colour and mark. */
    List<Component> summaries() {
        return forms.stream().flatMap(ActForms::summary).toList();
    }

    private static Stream<Component> summary(ActForm form) {
        var side = form.side();
        return side == null ? Stream.empty() : Stream.of(Choices.limb(side, form.summary()));
    }

    private ActForm add() {
        var form = new ActForm(inPlace, source, ids, changed);
        var box = new Div(form);
        if (!forms.isEmpty()) {
            box.add(Choices.link(Texts.text("treatment.act.remove"), () -> {
                forms.remove(form);
                shown.remove(box);
                changed.run();
            }));
        }
        forms.add(form);
        shown.add(box);
        return form;
    }
}
