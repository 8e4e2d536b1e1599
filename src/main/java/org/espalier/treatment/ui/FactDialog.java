package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.patient.FactId;
import org.espalier.treatment.Plan;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.Stop;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFact;

/** Asks for one fact and writes it down; stays open with everything typed while something is missing or stopped. */
abstract class FactDialog extends Dialog {

    private final transient Desk desk;
    private final transient Treatment treatment;
    private final transient FactId id;
    private final transient Runnable done;
    private final Div fields = new Div();
    private final StopPanel stops;
    private final ProofField proof;
    private boolean complete;

    FactDialog(String title, String save, Desk desk, Treatment treatment, Runnable done) {
        this.desk = desk;
        this.treatment = treatment;
        this.done = done;
        id = new FactId(desk.ids().next());
        stops = new StopPanel(desk.reversals(), desk.ids(), treatment.child());
        proof = new ProofField(desk.signAgain());
        setHeaderTitle(Texts.text(title));
        addClassName("fact-dialog");
        fields.addClassName("form-fields");
        var button = new Button(Texts.text(save), click -> save());
        button.addThemeVariants(ButtonVariant.PRIMARY);
        add(fields, proof, stops);
        getFooter().add(new Button(Texts.text("treatment.cancel"), click -> close()), button);
    }

    /** What was typed; asked only when {@link #check} found nothing missing. */
    abstract TreatmentFact fact();

    /** Demands what is needed by {@link #demand}. */
    abstract void check();

    /** Whether the deed bears the name of the person, who proves who they are when the last proof is long ago. */
    boolean isSigned() {
        return false;
    }

    /** Writes the fact down as a new one; a dialog that corrects does otherwise. */
    RecordOutcome keep(FactId fresh, TreatmentFact fact) {
        return desk.facts().record(treatment.child(), fresh, fact);
    }

    final void ask(Component... asked) {
        fields.add(asked);
    }

    final void demand(HasValidation field, boolean given, String text) {
        field.setInvalid(!given);
        field.setErrorMessage(Texts.text(text));
        complete &= given;
    }

    final Desk desk() {
        return desk;
    }

    final Treatment treatment() {
        return treatment;
    }

    private void save() {
        complete = true;
        stops.clear();
        check();
        if (!complete || isSigned() && !proof.isProved()) {
            return;
        }
        var fact = fact();
        if (keep(id, fact) instanceof RecordOutcome.Stopped(var why)) {
            stops.show(why, stop -> place(fact, stop), this::save);
        } else {
            close();
            done.run();
        }
    }

    private static StopPanel.Place place(TreatmentFact fact, Stop stop) {
        return Optional.of(fact)
                .filter(Plan.class::isInstance)
                .map(Plan.class::cast)
                .filter(plan -> plan.plateSide() != null)
                .flatMap(plan -> plan.physis()
                        .map(physis -> new StopPanel.Place(
                                physis, Optional.ofNullable(plan.plateSide()).orElseThrow())))
                .orElseThrow(() -> new IllegalStateException("nothing to reverse: " + stop));
    }
}
