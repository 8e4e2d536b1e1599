package org.espalier.followup;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.UUID;
import org.espalier.patient.ChildId;
import org.jspecify.annotations.Nullable;

/**
 * One thing that happened to a visit; never changed.
 *
 * @param on the day it is about: of a booking, the day given
 */
public record VisitStep(
        UUID id,
        ChildId child,
        VisitId visit,
        Kind kind,
        LocalDate on,
        @Nullable LocalTime at,
        Optional<VisitReason> reason,
        Optional<String> note,
        Source source,
        Instant recordedAt) {

    /** What happened. */
    public enum Kind {
        BOOKED,
        MOVED,
        DATE_TAKEN_BACK,
        ARRIVED,
        NOT_BROUGHT,
        CANCELLED,
        CARE_ENDED,
        CAME_WITH_TRANSFER
    }

    /** Who told. */
    public enum Source {
        HAND,
        BOOKING_FILE,
        PROCEDURE,
        TRANSFER,
        /** From the hospital's own records, when these were brought in. */
        BROUGHT_IN
    }
}
