package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A visit that is over, as a hospital's own record tells of it.
 *
 * @param state how it ended
 * @param on the day it is about
 * @param end why care ended, when it did; empty when the child is mature
 * @param asked what had been asked for
 */
public record EarlierVisit(
        VisitState state,
        LocalDate on,
        Optional<VisitReason> reason,
        String note,
        Optional<EndReason> end,
        Optional<Visit.Asked> asked) {

    public EarlierVisit {
        if (state == VisitState.PLANNED || state == VisitState.BOOKED) {
            throw new IllegalArgumentException("not over: " + state);
        }
    }
}
