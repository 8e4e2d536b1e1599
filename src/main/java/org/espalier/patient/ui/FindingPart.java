package org.espalier.patient.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.Fact;
import org.espalier.patient.FactId;
import org.espalier.patient.Finding;
import org.espalier.patient.History;

/** One kind of finding on a child: its facts, and the form to add to them, which opens when it is asked for. */
final class FindingPart<F extends Finding> extends Composite<Section> {

    private final ExaminationService examinations;
    private final ChildId child;
    private final FactTable<F> table;
    private final FindingForm<F> form;
    private final Button add;
    private final String nothing;
    private final Runnable changed;

    /**
     * @param words keys begin with it: {@code title}, {@code empty} for what is said when there is nothing, {@code add}
     *     for the button that opens the form
     * @param changed told when something was written down
     */
    FindingPart(
            ExaminationService examinations,
            ChildId child,
            String words,
            List<FactTable.Column<F>> columns,
            FindingForm<F> form,
            Runnable changed) {
        this.examinations = examinations;
        this.child = child;
        this.form = form;
        this.changed = changed;
        nothing = Texts.text(words + "empty");
        table = new FactTable<>(columns, this::correct, this::askToWithdraw);
        add = new Button(Texts.text(words + "add"), click -> open());
        form.onSave(this::save);
        form.setVisible(form.isBegun());
        add.setVisible(!form.isBegun());
        var head = new Div(new H2(Texts.text(words + "title")), add);
        head.addClassName("part-head");
        getContent().addClassName("sheet");
        getContent().add(head, table, form);
    }

    void addNote(String text) {
        getContent().add(PageParts.paragraph("small", text));
    }

    void show(History<F> history) {
        table.show(history, nothing);
    }

    private void open() {
        form.setVisible(true);
        add.setVisible(false);
    }

    private void correct(Fact<F> fact) {
        open();
        form.correct(fact);
    }

    private void save(FindingForm.Entry<F> entry) {
        var correcting = Optional.ofNullable(entry.correcting());
        boolean kept = correcting.isEmpty() || correct(correcting.get(), entry);
        if (correcting.isEmpty()) {
            Map<FactId, Finding> found = new LinkedHashMap<>(entry.besides());
            found.put(entry.id(), entry.finding());
            examinations.recordTogether(child, found);
        }
        changed.run();
        if (kept) {
            form.clear();
            form.say(Texts.text("patient.saved"), "");
        } else {
            form.say(Texts.text("patient.superseded-meanwhile"), "soon");
        }
    }

    private boolean correct(FactId earlier, FindingForm.Entry<F> entry) {
        return examinations.correct(child, earlier, entry.id(), entry.finding(), entry.reason());
    }

    private void askToWithdraw(Fact<F> fact) {
        new WithdrawDialog(reason -> {
                    boolean kept = examinations.withdraw(child, fact, form.nextId(), reason);
                    changed.run();
                    open();
                    form.say(
                            Texts.text(kept ? "patient.withdrawn.done" : "patient.superseded-meanwhile"),
                            kept ? "" : "soon");
                })
                .open();
    }
}
