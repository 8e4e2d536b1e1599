package org.espalier.followup;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/**
 * One look at a child: wanted, given a date, and what became of it.
 *
 * @param version counts the changes
 * @param asked what somebody asked for beside the rules
 * @param closing empty while it is open
 */
public record Visit(
        VisitId id,
        ChildId child,
        SiteId site,
        long version,
        OpenedFor openedFor,
        Instant openedAt,
        Optional<Asked> asked,
        Due due,
        Optional<Appointment> appointment,
        Optional<Closing> closing) {

    /** A look that somebody asked for by a day, and why. */
    public record Asked(LocalDate by, String why) {}

    /** Where it stands. */
    public VisitState state() {
        return closing.map(Closing::state).orElse(appointment.isPresent() ? VisitState.BOOKED : VisitState.PLANNED);
    }

    public boolean isOpen() {
        return closing.isEmpty();
    }

    /** The day it took place or should have, else its date, else the day by which it is due. */
    public LocalDate day() {
        return closing.map(Closing::on)
                .or(() -> appointment.map(Appointment::on))
                .orElse(due.lookBy());
    }

    /** Whether the last good day has passed and the child has not come. */
    public boolean isLate(LocalDate today) {
        return isOpen() && due.lookBy().isBefore(today);
    }
}
