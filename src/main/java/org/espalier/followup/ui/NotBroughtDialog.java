package org.espalier.followup.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.espalier.followup.Appointment;
import org.espalier.followup.Happening;
import org.espalier.followup.Visit;
import org.espalier.followup.VisitReason;
import org.espalier.kit.DateEntryField;

/** The child was not brought: on which day, and why as far as the family says. */
final class NotBroughtDialog extends VisitDialog {

    private final LocalDate today;
    private final Function<Happening, Optional<String>> record;
    private final DateEntryField on;
    private final Select<VisitReason> reason;
    private final TextField note;

    NotBroughtDialog(Visit visit, LocalDate today, KeptFields kept, Function<Happening, Optional<String>> record) {
        super("followup.not-brought.title", "followup.not-brought", kept);
        this.today = today;
        this.record = record;
        on = day("followup.not-brought.on", today);
        reason = reason();
        note = note("followup.note");
        on.setValue(visit.appointment()
                .map(Appointment::on)
                .filter(day -> !day.isAfter(today))
                .orElse(today));
        kept.day("on", on)
                .choice("reason", reason, VisitReason.class)
                .text("note", note)
                .goOn();
    }

    @Override
    boolean save() {
        var day = on.getValue();
        if (!isDay(on, day != null && !day.isAfter(today), "followup.day.past")) {
            return false;
        }
        return isWritten(record.apply(
                new Happening.NotBrought(Objects.requireNonNull(day), reason.getValue(), note.getValue())));
    }
}
