package org.espalier.followup;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The date a family was given, by the site's own clock.
 *
 * @param booking the number of the booking in the hospital's booking system; null when it did not come from there
 */
public record Appointment(
        LocalDate on, @Nullable LocalTime at, @Nullable String booking) {

    /** A date given by hand. */
    public static Appointment of(LocalDate on, @Nullable LocalTime at) {
        return new Appointment(on, at, null);
    }

    /** The time of day; empty when only the day is known. */
    public Optional<LocalTime> time() {
        return Optional.ofNullable(at);
    }
}
