package org.espalier.treatment.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Arrays;
import java.util.List;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFact;

/** Ends care of a limb or of both, or takes it up again. */
final class CareDialog extends FactDialog {

    private final DateEntryField on;
    private final Select<CareStep.Step> step =
            Choices.of("treatment.care.step", List.of(CareStep.Step.ENDED, CareStep.Step.TAKEN_UP));
    private final Select<CareStep.EndReason> why =
            Choices.of("treatment.care.why", Arrays.asList(CareStep.EndReason.values()));
    private final Select<Side> side = Choices.of("treatment.care.limb", List.of(Side.RIGHT, Side.LEFT));
    private final TextField note = Choices.text("treatment.note", TreatmentFact.REMARK_LENGTH);

    CareDialog(Desk desk, Treatment treatment, Runnable done) {
        super("treatment.care.new", "treatment.care.save", desk, treatment, done);
        on = new DateEntryField(Texts.text("treatment.care.on"), treatment::today);
        on.type(DateText.typed(treatment.today()));
        side.setEmptySelectionAllowed(true);
        side.setEmptySelectionCaption(Texts.text("treatment.care.both"));
        side.setItemLabelGenerator(one -> one == null ? Texts.text("treatment.care.both") : Texts.of(one));
        why.setVisible(false);
        step.addValueChangeListener(change -> why.setVisible(change.getValue() == CareStep.Step.ENDED));
        ask(on, step, why, side, note);
    }

    @Override
    void check() {
        demand(on, on.getValue() != null, "treatment.on.missing");
        demand(step, step.getValue() != null, "treatment.care.step.missing");
        demand(why, step.getValue() != CareStep.Step.ENDED || why.getValue() != null, "treatment.care.why.missing");
    }

    @Override
    TreatmentFact fact() {
        return new CareStep(
                on.getValue(),
                side.getValue(),
                step.getValue(),
                step.getValue() == CareStep.Step.ENDED ? why.getValue() : null,
                note.getValue());
    }
}
