package org.espalier.followup;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A row of the booking system's file.
 *
 * @param line where it stands in the file, the heading being line 1
 * @param number the child's local number
 * @param booking the booking system's own number of the date
 */
record BookingRow(
        long line,
        String number,
        String booking,
        LocalDate on,
        @Nullable LocalTime at,
        Optional<Outcome> outcome) {

    /** What became of the date, as the booking system says. */
    enum Outcome {
        ARRIVED,
        NOT_BROUGHT,
        CANCELLED
    }

    Appointment appointment() {
        return new Appointment(on, at, booking);
    }
}
