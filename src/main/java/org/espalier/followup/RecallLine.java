package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.patient.Child;

/**
 * A child that is late or without a date.
 *
 * @param notBrought how often it was not brought since it last came
 * @param last what was tried last for this visit
 * @param tried how often something was tried for this visit
 * @param proposed the way to try next
 */
public record RecallLine(
        Child child,
        Visit visit,
        LocalDate today,
        int notBrought,
        Optional<Attempt> last,
        int tried,
        Channel proposed,
        Family family) {

    /** Why a child stands on the recall. */
    public enum Why {
        LATE,
        NO_DATE,
        DATE_TOO_LATE,
        NOT_SAID_WHETHER_CAME
    }

    public Why why() {
        boolean past =
                visit.appointment().filter(date -> date.on().isBefore(today)).isPresent();
        if (past) {
            return Why.NOT_SAID_WHETHER_CAME;
        }
        if (visit.isLate(today)) {
            return Why.LATE;
        }
        return visit.appointment().isPresent() ? Why.DATE_TOO_LATE : Why.NO_DATE;
    }
}
