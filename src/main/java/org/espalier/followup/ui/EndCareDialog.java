package org.espalier.followup.ui;

import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.espalier.followup.CareEnd;
import org.espalier.followup.EndReason;
import org.espalier.followup.Happening;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;

/** The child leaves care: mature, or for a reason that is kept. */
final class EndCareDialog extends VisitDialog {

    private enum Choice {
        MATURE,
        STRAIGHT,
        ADULT_CARE,
        LEFT_NETWORK,
        DECLINED,
        DIED;

        private Optional<EndReason> reason() {
            return Arrays.stream(EndReason.values())
                    .filter(reason -> reason.name().equals(name()))
                    .findFirst();
        }

        private String text() {
            return reason().map(Texts::of).orElseGet(() -> Texts.text("followup.mature"));
        }
    }

    private final LocalDate today;
    private final Function<Happening, Optional<String>> record;
    private final Select<Choice> how = new Select<>();
    private final DateEntryField on;
    private final TextField note;

    EndCareDialog(LocalDate today, KeptFields kept, Function<Happening, Optional<String>> record) {
        super("followup.end-care.title", "followup.end-care", kept);
        this.today = today;
        this.record = record;
        how.setLabel(Texts.text("followup.end-care.how"));
        how.setItems(Choice.values());
        how.setItemLabelGenerator(Choice::text);
        how.setErrorMessage(Texts.text("followup.end-care.how.missing"));
        field(how);
        on = day("followup.end-care.on", today);
        on.setValue(today);
        note = note("followup.note");
        add(new Paragraph(Texts.text("followup.end-care.help")));
        kept.choice("how", how, Choice.class).day("on", on).text("note", note).goOn();
    }

    @Override
    boolean save() {
        var day = on.getValue();
        how.setInvalid(how.isEmpty());
        if (!isDay(on, day != null && !day.isAfter(today), "followup.day.past") || how.isInvalid()) {
            return false;
        }
        var end = new CareEnd(how.getValue().reason(), Objects.requireNonNull(day), note.getValue());
        return isWritten(record.apply(new Happening.CareEnded(end)));
    }
}
