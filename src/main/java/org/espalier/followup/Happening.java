package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;

/** What can happen to an open visit. */
public sealed interface Happening {

    /** The family was given a date, the first or another. */
    record Booked(Appointment appointment) implements Happening {}

    /** The date was given up; the visit stays wanted. */
    record DateTakenBack(VisitReason reason, String note) implements Happening {}

    /**
     * The child came.
     *
     * @param next what somebody asked for beside the rules
     */
    record Arrived(LocalDate on, Optional<Visit.Asked> next) implements Happening {}

    /** The child was not brought; the look stays due as it was. */
    record NotBrought(LocalDate on, VisitReason reason, String note) implements Happening {}

    /**
     * The visit was given up.
     *
     * @param nextBy by when to look instead; without it the visit cannot be given up
     */
    record Cancelled(LocalDate on, VisitReason reason, String note, Optional<LocalDate> nextBy) implements Happening {}

    /** Care ended: the child needs no further visit. */
    record CareEnded(CareEnd end) implements Happening {}
}
