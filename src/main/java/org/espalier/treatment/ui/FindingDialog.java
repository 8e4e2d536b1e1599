package org.espalier.treatment.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Arrays;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.treatment.ImplantFinding;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFact;

/** Says what was seen of an implant. */
final class FindingDialog extends FactDialog {

    private final ImplantId implant;
    private final DateEntryField on;
    private final Select<ImplantFinding.Part> part =
            Choices.of("treatment.part", Arrays.asList(ImplantFinding.Part.values()));
    private final Select<ImplantFinding.Seen> seen =
            Choices.of("treatment.seen.as", Arrays.asList(ImplantFinding.Seen.values()));
    private final DateEntryField toldOn;
    private final TextField note = Choices.text("treatment.note", TreatmentFact.REMARK_LENGTH);

    FindingDialog(ImplantId implant, Desk desk, Treatment treatment, Runnable done) {
        super("treatment.seen.new", "treatment.seen.save", desk, treatment, done);
        this.implant = implant;
        on = new DateEntryField(Texts.text("treatment.seen.on"), treatment::today);
        on.type(DateText.typed(treatment.today()));
        toldOn = new DateEntryField(Texts.text("treatment.told-on"), treatment::today);
        toldOn.setVisible(false);
        seen.addValueChangeListener(
                change -> toldOn.setVisible(change.getValue() == ImplantFinding.Seen.FRAGMENT_RETAINED));
        ask(on, part, seen, toldOn, note);
    }

    @Override
    void check() {
        demand(on, on.getValue() != null, "treatment.on.missing");
        demand(part, part.getValue() != null, "treatment.part.missing");
        demand(seen, seen.getValue() != null, "treatment.seen.missing");
        demand(toldOn, toldOn.typed().isBlank() || toldOn.getValue() != null, "treatment.day.unreadable");
    }

    @Override
    TreatmentFact fact() {
        return new ImplantFinding(
                on.getValue(),
                implant,
                part.getValue(),
                seen.getValue(),
                toldOn.isVisible() ? toldOn.getValue() : null,
                note.getValue());
    }
}
