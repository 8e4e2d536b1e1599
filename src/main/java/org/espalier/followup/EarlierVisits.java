package org.espalier.followup;

import java.time.Clock;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Ids;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Visits that took place, or did not, before this record began. Each closes the open visit and opens the next one, as
 * it would have then, so that the child is never without. Only a job of the house brings them in.
 */
@Component
@Transactional
public class EarlierVisits {

    private final JdbcVisitRepository visits;
    private final JdbcVisitStepRepository steps;
    private final VisitOpening opening;
    private final VisitService service;
    private final DueDates dueDates;
    private final SiteService sites;
    private final Ids ids;
    private final Clock clock;

    EarlierVisits(
            JdbcVisitRepository visits,
            JdbcVisitStepRepository steps,
            VisitOpening opening,
            VisitService service,
            DueDates dueDates,
            SiteService sites,
            Ids ids,
            Clock clock) {
        this.visits = visits;
        this.steps = steps;
        this.opening = opening;
        this.service = service;
        this.dueDates = dueDates;
        this.sites = sites;
        this.ids = ids;
        this.clock = clock;
    }

    /** The next visit of the child that is over, after those on record. */
    public VisitOutcome add(ChildId child, SiteId site, EarlierVisit earlier) {
        demandJob();
        if (earlier.on().isAfter(sites.today(site))) {
            throw new IllegalArgumentException("A visit that is over was before today, not on " + earlier.on());
        }
        var open = visits.findOpen(child).orElseGet(() -> service.resume(child, site, asked(earlier)));
        ask(open, earlier.asked());
        var visit = visits.findOpen(child).orElseThrow();
        if (earlier.state() == VisitState.CARE_ENDED) {
            var end = new CareEnd(earlier.end(), earlier.on(), earlier.note());
            return service.record(visit, new Happening.CareEnded(end), VisitStep.Source.BROUGHT_IN);
        }
        close(visit, earlier);
        return new VisitOutcome.Done(opening.open(child, site, openedFor(earlier.state()), Optional.empty()));
    }

    /** What is asked for and booked of the open visit. */
    public void leaveOpen(ChildId child, Optional<Visit.Asked> asked, Optional<Appointment> appointment) {
        demandJob();
        var open = visits.findOpen(child).orElseThrow(() -> new IllegalArgumentException("Care has ended"));
        ask(open, asked);
        var now = visits.findOpen(child).orElseThrow();
        if (!now.appointment().equals(appointment)) {
            visits.book(now, appointment);
            appointment.ifPresent(given -> step(now, VisitStep.Kind.BOOKED, given));
        }
        var rules = dueDates.rules(now.site());
        visits.setDue(now.id(), dueDates.of(child, asked, rules), rules.mark());
    }

    private void ask(Visit open, Optional<Visit.Asked> asked) {
        if (!open.asked().equals(asked)) {
            visits.ask(open.id(), asked);
        }
    }

    private void close(Visit visit, EarlierVisit earlier) {
        var note = Optional.of(earlier.note().strip()).filter(text -> !text.isEmpty());
        var closing = new Closing(earlier.state(), earlier.on(), earlier.reason(), note, clock.instant());
        visits.close(visit, closing, null);
        var kind = VisitStep.Kind.valueOf(earlier.state().name());
        steps.add(
                new VisitStep(
                        ids.next(),
                        visit.child(),
                        visit.id(),
                        kind,
                        earlier.on(),
                        null,
                        earlier.reason(),
                        note,
                        VisitStep.Source.BROUGHT_IN,
                        clock.instant()),
                visit.site(),
                null);
    }

    private void step(Visit visit, VisitStep.Kind kind, Appointment given) {
        steps.add(
                new VisitStep(
                        ids.next(),
                        visit.child(),
                        visit.id(),
                        kind,
                        given.on(),
                        given.at(),
                        Optional.empty(),
                        Optional.empty(),
                        VisitStep.Source.BROUGHT_IN,
                        clock.instant()),
                visit.site(),
                null);
    }

    private static Visit.Asked asked(EarlierVisit earlier) {
        return earlier.asked()
                .orElseGet(() -> new Visit.Asked(earlier.on(), earlier.state().name()));
    }

    private static OpenedFor openedFor(VisitState closed) {
        return switch (closed) {
            case NOT_BROUGHT -> OpenedFor.NOT_BROUGHT;
            case CANCELLED -> OpenedFor.CANCELLED;
            default -> OpenedFor.NEXT_LOOK;
        };
    }

    private static void demandJob() {
        if (Callers.current().filter(Caller.SystemAtSite.class::isInstance).isEmpty()) {
            throw new AccessDeniedException("only a job of the house brings visits in");
        }
    }
}
