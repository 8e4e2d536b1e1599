package org.espalier.treatment.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Arrays;
import java.util.List;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Complication;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFact;

/** Writes a complication down. */
final class ComplicationDialog extends FactDialog {

    private final DateEntryField on;
    private final Select<Complication.Kind> kind =
            Choices.of("treatment.complication.kind", Arrays.asList(Complication.Kind.values()));
    private final Select<Complication.Grade> grade =
            Choices.of("treatment.complication.grade", Arrays.asList(Complication.Grade.values()));
    private final Select<Side> side = Choices.optional("treatment.side", List.of(Side.RIGHT, Side.LEFT));
    private final TextField note = Choices.text("treatment.note", TreatmentFact.REMARK_LENGTH);

    ComplicationDialog(Desk desk, Treatment treatment, Runnable done) {
        super("treatment.complication.new", "treatment.complication.save", desk, treatment, done);
        on = new DateEntryField(Texts.text("treatment.seen.on"), treatment::today);
        on.type(DateText.typed(treatment.today()));
        ask(on, kind, grade, side, note);
    }

    @Override
    void check() {
        demand(on, on.getValue() != null, "treatment.on.missing");
        demand(kind, kind.getValue() != null, "treatment.complication.kind.missing");
        demand(grade, grade.getValue() != null, "treatment.complication.grade.missing");
        boolean said =
                kind.getValue() != Complication.Kind.OTHER || !note.getValue().isBlank();
        demand(note, said, "treatment.complication.note.missing");
    }

    @Override
    TreatmentFact fact() {
        return new Complication(
                on.getValue(), kind.getValue(), grade.getValue(), null, side.getValue(), note.getValue());
    }
}
