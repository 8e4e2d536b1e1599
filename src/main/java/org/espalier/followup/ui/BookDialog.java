package org.espalier.followup.ui;

import com.vaadin.flow.component.timepicker.TimePicker;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.espalier.followup.Appointment;
import org.espalier.followup.Happening;
import org.espalier.followup.Visit;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;

/** A date for the visit, the first or another. */
final class BookDialog extends VisitDialog {

    private final LocalDate today;
    private final Function<Happening, Optional<String>> record;
    private final DateEntryField on;
    private final TimePicker at;

    BookDialog(Visit visit, LocalDate today, KeptFields kept, Function<Happening, Optional<String>> record) {
        super("followup.book.title", "followup.book", kept);
        this.today = today;
        this.record = record;
        on = day("followup.book.on", today);
        at = field(new TimePicker(Texts.text("followup.book.at")));
        at.setHelperText(Texts.text("followup.book.at.help"));
        at.setI18n(new TimePicker.TimePickerI18n().setBadInputErrorMessage(Texts.text("followup.book.at.unread")));
        visit.appointment().ifPresent(appointment -> {
            on.setValue(appointment.on());
            appointment.time().ifPresent(at::setValue);
        });
        kept.day("on", on).time("at", at).goOn();
    }

    @Override
    boolean save() {
        var day = on.getValue();
        boolean dayToCome = isDay(on, day != null && !day.isBefore(today), "followup.day.to-come");
        if (!dayToCome || at.isInvalid()) {
            return false;
        }
        return isWritten(
                record.apply(new Happening.Booked(Appointment.of(Objects.requireNonNull(day), at.getValue()))));
    }
}
