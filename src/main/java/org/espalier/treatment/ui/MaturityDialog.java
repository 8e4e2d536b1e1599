package org.espalier.treatment.ui;

import com.vaadin.flow.component.textfield.TextField;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;
import org.espalier.treatment.Maturity;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFact;

/** Says on which film, and by whom, a physis was seen closed, and what becomes of what is in. */
final class MaturityDialog extends FactDialog {

    private final PhysisKey physis;
    private final DateEntryField filmOn;
    private final TextField reader = Choices.text("treatment.reader", Maturity.NAME_LENGTH);
    private final DateEntryField toldOn;
    private final DateEntryField removeBy;

    MaturityDialog(PhysisKey physis, Desk desk, Treatment treatment, Runnable done) {
        super("treatment.closed.new", "treatment.closed.save", desk, treatment, done);
        this.physis = physis;
        filmOn = new DateEntryField(Texts.text("treatment.film-on"), treatment::today);
        toldOn = new DateEntryField(Texts.text("treatment.retained-told-on"), treatment::today);
        removeBy = new DateEntryField(Texts.text("treatment.remove-by"), treatment::today);
        boolean in = treatment.tethersIn().stream()
                .anyMatch(tether -> tether.physis().equals(physis) && !tether.isPermanent());
        toldOn.setVisible(in);
        removeBy.setVisible(in);
        ask(filmOn, reader, toldOn, removeBy);
    }

    @Override
    void check() {
        demand(filmOn, filmOn.getValue() != null, "treatment.film-on.missing");
        demand(reader, !reader.getValue().isBlank(), "treatment.reader.missing");
        demand(toldOn, toldOn.typed().isBlank() || toldOn.getValue() != null, "treatment.day.unreadable");
        demand(removeBy, removeBy.typed().isBlank() || removeBy.getValue() != null, "treatment.day.unreadable");
        if (toldOn.getValue() != null) {
            demand(removeBy, removeBy.getValue() == null, "treatment.closed.both");
        }
    }

    @Override
    TreatmentFact fact() {
        return new Maturity(
                filmOn.getValue(),
                physis.side(),
                physis.bone(),
                physis.end(),
                reader.getValue(),
                toldOn.getValue(),
                removeBy.getValue());
    }
}
