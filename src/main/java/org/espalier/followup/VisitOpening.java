package org.espalier.followup;

import java.time.Clock;
import java.util.Optional;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.patient.ChildRegistered;
import org.espalier.platform.Ids;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Opens visits: the first one in the transaction that registers a child, each later one in that which closes another.
 */
@Component
class VisitOpening {

    private final JdbcVisitRepository visits;
    private final DueDates dueDates;
    private final CurrentStaff currentStaff;
    private final Ids ids;
    private final Clock clock;

    VisitOpening(JdbcVisitRepository visits, DueDates dueDates, CurrentStaff currentStaff, Ids ids, Clock clock) {
        this.visits = visits;
        this.dueDates = dueDates;
        this.currentStaff = currentStaff;
        this.ids = ids;
        this.clock = clock;
    }

    @EventListener
    void openFirst(ChildRegistered registered) {
        var due = dueDates.of(registered.child(), Optional.empty());
        add(
                new VisitId(registered.visit()),
                registered.child(),
                registered.site(),
                OpenedFor.REGISTERED,
                Optional.empty(),
                due);
    }

    /** Opens the child's next visit, due as the rules say. */
    Visit open(ChildId child, SiteId site, OpenedFor openedFor, Optional<Visit.Asked> asked) {
        return openAs(child, site, openedFor, asked, dueDates.of(child, asked));
    }

    /** Opens a visit in place of one that did not take place, due as that was. */
    Visit openAgain(Visit missed, OpenedFor openedFor) {
        return openAs(missed.child(), missed.site(), openedFor, missed.asked(), missed.due());
    }

    private Visit openAs(ChildId child, SiteId site, OpenedFor openedFor, Optional<Visit.Asked> asked, Due due) {
        var visit = new VisitId(ids.next());
        add(visit, child, site, openedFor, asked, due);
        visits.pointTo(child, visit);
        return visits.findOpen(child).orElseThrow();
    }

    private void add(
            VisitId visit, ChildId child, SiteId site, OpenedFor openedFor, Optional<Visit.Asked> asked, Due due) {
        var by = currentStaff.find().orElse(null);
        visits.open(visit, site, child, openedFor, by, clock.instant(), asked, due);
    }
}
