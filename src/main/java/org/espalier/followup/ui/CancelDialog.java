package org.espalier.followup.ui;

import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import org.espalier.followup.Happening;
import org.espalier.followup.VisitReason;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;

/** Gives up the visit; a child in care always has another one. */
final class CancelDialog extends VisitDialog {

    private final LocalDate today;
    private final Function<Happening, Optional<String>> record;
    private final Select<VisitReason> reason;
    private final TextField note;
    private final DateEntryField next;

    CancelDialog(LocalDate today, KeptFields kept, Function<Happening, Optional<String>> record) {
        super("followup.give-up.title", "followup.give-up", kept);
        this.today = today;
        this.record = record;
        reason = reason();
        note = note("followup.note");
        next = day("followup.give-up.next", today);
        add(new Paragraph(Texts.text("followup.give-up.help")));
        kept.choice("reason", reason, VisitReason.class)
                .text("note", note)
                .day("next", next)
                .goOn();
    }

    @Override
    boolean save() {
        var day = next.getValue();
        if (!isDay(next, day != null && !day.isBefore(today), "followup.next-missing")) {
            return false;
        }
        return isWritten(record.apply(
                new Happening.Cancelled(today, reason.getValue(), note.getValue(), Optional.ofNullable(day))));
    }
}
