package org.espalier.followup;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.espalier.treatment.TreatmentService;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The visits of a child. In care there is always exactly one that is open: what closes it opens the next one in the
 * same transaction, and only the end of care leaves none.
 */
@Service
@Transactional
public class VisitService {

    private final JdbcVisitRepository visits;
    private final JdbcVisitStepRepository steps;
    private final VisitOpening opening;
    private final TreatmentService treatments;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final ApplicationEventPublisher events;
    private final Ids ids;
    private final Clock clock;

    VisitService(
            JdbcVisitRepository visits,
            JdbcVisitStepRepository steps,
            VisitOpening opening,
            TreatmentService treatments,
            SiteService sites,
            CurrentStaff currentStaff,
            ApplicationEventPublisher events,
            Ids ids,
            Clock clock) {
        this.visits = visits;
        this.steps = steps;
        this.opening = opening;
        this.treatments = treatments;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.events = events;
        this.ids = ids;
        this.clock = clock;
    }

    /** All visits of the child, for a screen that has opened its record. */
    public Visits of(ChildId child) {
        return new Visits(visits.findOpen(child), visits.past(child), steps.of(child), steps.end(child));
    }

    /**
     * Writes down what happened to the open visit.
     *
     * @param visit the visit as the caller saw it
     */
    public VisitOutcome record(Visit visit, Happening happening) {
        return record(visit, happening, VisitStep.Source.HAND);
    }

    /** Takes a child into care again whose care had ended. */
    public Visit resume(ChildId child, SiteId site, Visit.Asked asked) {
        if (visits.findOpen(child).isPresent()) {
            throw new IllegalArgumentException("in care already: " + child);
        }
        var by = currentStaff.find().orElse(null);
        steps.resume(ids.next(), child, site, sites.today(site), by, clock.instant());
        return opening.open(child, site, OpenedFor.CARE_RESUMED, Optional.of(asked));
    }

    /**
     * What a procedure means for the open visit: done since that was opened, it is the visit that took place. Of an
     * earlier one, and of a corrected record, only what was asked for next counts, unless that day has passed.
     */
    void afterProcedure(Visit visit, LocalDate doneOn, boolean corrected, Visit.Asked asked) {
        var opened =
                LocalDate.ofInstant(visit.openedAt(), sites.get(visit.site()).zone());
        if (!corrected && !doneOn.isBefore(opened)) {
            arrive(visit, doneOn, Optional.of(asked), VisitStep.Source.PROCEDURE);
        } else if (!asked.by().isBefore(sites.today(visit.site()))) {
            visits.ask(visit.id(), Optional.of(asked));
        }
    }

    VisitOutcome record(Visit visit, Happening happening, VisitStep.Source source) {
        return switch (happening) {
            case Happening.Booked(var appointment) -> book(visit, appointment, source);
            case Happening.DateTakenBack(var reason, var note) -> takeBack(visit, reason, note, source);
            case Happening.Arrived(var on, var next) -> arrive(visit, on, next, source);
            case Happening.NotBrought(var on, var reason, var note) -> notBrought(visit, on, reason, note, source);
            case Happening.Cancelled(var on, var reason, var note, var nextBy) ->
                nextBy.map(by -> cancel(visit, on, reason, note, by, source)).orElseGet(VisitOutcome.NextMissing::new);
            case Happening.CareEnded(var end) -> end(visit, end, source);
        };
    }

    private VisitOutcome book(Visit visit, Appointment appointment, VisitStep.Source source) {
        if (!visits.book(visit, Optional.of(appointment))) {
            return new VisitOutcome.ChangedMeanwhile();
        }
        var kind = visit.appointment().isEmpty() ? VisitStep.Kind.BOOKED : VisitStep.Kind.MOVED;
        add(visit, kind, appointment.on(), appointment.at(), source, Optional.empty(), "");
        return done(visit);
    }

    private VisitOutcome takeBack(Visit visit, VisitReason reason, String note, VisitStep.Source source) {
        if (!visits.book(visit, Optional.empty())) {
            return new VisitOutcome.ChangedMeanwhile();
        }
        add(visit, VisitStep.Kind.DATE_TAKEN_BACK, visit.day(), null, source, Optional.of(reason), note);
        return done(visit);
    }

    private VisitOutcome arrive(Visit visit, LocalDate on, Optional<Visit.Asked> next, VisitStep.Source source) {
        demandPast(visit, on);
        if (!close(visit, VisitState.ARRIVED, on, Optional.empty(), "")) {
            return new VisitOutcome.ChangedMeanwhile();
        }
        add(visit, VisitStep.Kind.ARRIVED, on, null, source, Optional.empty(), "");
        var openedFor = source == VisitStep.Source.PROCEDURE ? OpenedFor.PROCEDURE : OpenedFor.NEXT_LOOK;
        return new VisitOutcome.Done(opening.open(visit.child(), visit.site(), openedFor, next));
    }

    private VisitOutcome notBrought(
            Visit visit, LocalDate on, VisitReason reason, String note, VisitStep.Source source) {
        demandPast(visit, on);
        if (!close(visit, VisitState.NOT_BROUGHT, on, Optional.of(reason), note)) {
            return new VisitOutcome.ChangedMeanwhile();
        }
        add(visit, VisitStep.Kind.NOT_BROUGHT, on, null, source, Optional.of(reason), note);
        return new VisitOutcome.Done(opening.openAgain(visit, OpenedFor.NOT_BROUGHT));
    }

    private VisitOutcome cancel(
            Visit visit, LocalDate on, VisitReason reason, String note, LocalDate nextBy, VisitStep.Source source) {
        if (!close(visit, VisitState.CANCELLED, on, Optional.of(reason), note)) {
            return new VisitOutcome.ChangedMeanwhile();
        }
        add(visit, VisitStep.Kind.CANCELLED, on, null, source, Optional.of(reason), note);
        var asked = Optional.of(new Visit.Asked(nextBy, note.isEmpty() ? reason.name() : note));
        return new VisitOutcome.Done(opening.open(visit.child(), visit.site(), OpenedFor.CANCELLED, asked));
    }

    private VisitOutcome end(Visit visit, CareEnd end, VisitStep.Source source) {
        demandPast(visit, end.on());
        var treated = treatments.of(visit.child());
        if (end.reason().isEmpty() && !treated.isSeenClosed()) {
            return new VisitOutcome.NotSeenClosed();
        }
        if (end.reason().filter(EndReason.STRAIGHT::equals).isPresent() && treated.canStillTurn()) {
            return new VisitOutcome.ImplantIn();
        }
        if (!close(visit, VisitState.CARE_ENDED, end.on(), Optional.empty(), end.note())) {
            return new VisitOutcome.ChangedMeanwhile();
        }
        add(visit, VisitStep.Kind.CARE_ENDED, end.on(), null, source, Optional.empty(), end.note());
        var by = currentStaff.find().orElse(null);
        steps.end(ids.next(), visit.child(), visit.site(), end, by, clock.instant());
        visits.letGo(visit.child());
        return new VisitOutcome.Done(visit);
    }

    private boolean close(Visit visit, VisitState state, LocalDate on, Optional<VisitReason> reason, String note) {
        var closing = new Closing(state, on, reason, filled(note), clock.instant());
        boolean closed = visits.close(visit, closing, currentStaff.find().orElse(null));
        if (closed) {
            events.publishEvent(new VisitClosed(visit.child(), visit.site(), visit.id(), state));
        }
        return closed;
    }

    private VisitOutcome done(Visit visit) {
        return new VisitOutcome.Done(visits.findOpen(visit.child()).orElseThrow());
    }

    private void add(
            Visit visit,
            VisitStep.Kind kind,
            LocalDate on,
            @Nullable LocalTime at,
            VisitStep.Source source,
            Optional<VisitReason> reason,
            String note) {
        var step = new VisitStep(
                ids.next(), visit.child(), visit.id(), kind, on, at, reason, filled(note), source, clock.instant());
        steps.add(step, visit.site(), currentStaff.find().orElse(null));
    }

    private void demandPast(Visit visit, LocalDate on) {
        if (on.isAfter(sites.today(visit.site()))) {
            throw new IllegalArgumentException("not today or before: " + on);
        }
    }

    private static Optional<String> filled(String note) {
        return note.isBlank() ? Optional.empty() : Optional.of(note.strip());
    }
}
