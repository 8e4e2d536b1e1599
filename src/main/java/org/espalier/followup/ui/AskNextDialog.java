package org.espalier.followup.ui;

import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Objects;
import java.util.function.Consumer;
import org.espalier.followup.Visit;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;

/** By when to look, and why. */
final class AskNextDialog extends VisitDialog {

    private final LocalDate today;
    private final Consumer<Visit.Asked> record;
    private final DateEntryField by;
    private final TextField why;

    AskNextDialog(LocalDate today, KeptFields kept, Consumer<Visit.Asked> record) {
        super("followup.ask.title", "followup.ask", kept);
        this.today = today;
        this.record = record;
        by = day("followup.look-by", today);
        why = note("followup.ask.why");
        why.setErrorMessage(Texts.text("followup.ask.why.missing"));
        kept.day("by", by).text("why", why).goOn();
    }

    @Override
    boolean save() {
        var day = by.getValue();
        why.setInvalid(why.getValue().isBlank());
        if (!isDay(by, day != null && !day.isBefore(today), "followup.day.to-come") || why.isInvalid()) {
            return false;
        }
        record.accept(
                new Visit.Asked(Objects.requireNonNull(day), why.getValue().strip()));
        return true;
    }
}
