package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.patient.Child;

/**
 * What becomes of one row of the booking system's file.
 *
 * @param line where it stands in the file
 * @param number the child's local number as written
 * @param child whose number it is, as far as the reader may see the child; empty where it is nobody's here
 * @param problem why the row is not taken; empty when it is
 */
public record BookingLine(
        long line,
        String number,
        Optional<Child> child,
        Optional<LocalDate> on,
        Effect effect,
        Optional<BookingProblem> problem) {

    /** What a row does. */
    public enum Effect {
        DATE_GIVEN,
        DATE_MOVED,
        ARRIVED,
        NOT_BROUGHT,
        DATE_TAKEN_BACK,
        /** All of it is on record already. */
        UNCHANGED,
        NOT_TAKEN
    }

    static BookingLine of(BookingRow row, Effect effect) {
        return new BookingLine(
                row.line(), row.number(), Optional.empty(), Optional.of(row.on()), effect, Optional.empty());
    }

    static BookingLine refused(long line, String number, BookingProblem problem) {
        return new BookingLine(
                line, number, Optional.empty(), Optional.empty(), Effect.NOT_TAKEN, Optional.of(problem));
    }

    BookingLine withChild(Optional<Child> whose) {
        return new BookingLine(line, number, whose, on, effect, problem);
    }
}
