package org.espalier.treatment;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What is done to a child's limbs. A procedure is recorded once by its id, whole or not at all, with everything that
 * hangs on it; a later one may stand in place of it, and both stay.
 */
@Service
@Transactional
public class TreatmentService {

    private final TreatmentReader reader;
    private final JdbcProcedureRepository procedures;
    private final SideCheck sides;
    private final StockBook stock;
    private final PatientService patients;
    private final CurrentStaff staff;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    TreatmentService(
            TreatmentReader reader,
            JdbcProcedureRepository procedures,
            SideCheck sides,
            StockBook stock,
            PatientService patients,
            CurrentStaff staff,
            ApplicationEventPublisher events,
            Clock clock) {
        this.reader = reader;
        this.procedures = procedures;
        this.sides = sides;
        this.stock = stock;
        this.patients = patients;
        this.staff = staff;
        this.events = events;
        this.clock = clock;
    }

    /**
     * All that was done and is meant to be done, and where each physis stands.
     *
     * @throws IllegalArgumentException when there is no such child that the caller may see
     */
    public Treatment of(ChildId child) {
        var site = reader.site(child).orElseThrow(() -> noSuch(child));
        return reader.treatment(child, site, reader.record(child));
    }

    /** Which way a physis is bent by the latest signed reading up to the day; empty when none tells. */
    public Optional<MeasuredDeformity> deformity(ChildId child, PhysisKey physis, LocalDate until) {
        return sides.measured(of(child), physis, until);
    }

    /**
     * Records a procedure. Sent again with the same id it is kept once.
     *
     * @throws StockRefused when a piece cannot be taken from its shelf
     */
    public RecordOutcome record(ChildId child, ProcedureId id, ProcedureData data) {
        return keep(child, id, data, Optional.empty(), null);
    }

    /** Records a procedure in place of an earlier one. */
    public RecordOutcome correct(
            ChildId child, ProcedureId earlier, ProcedureId id, ProcedureData data, String reason) {
        return keep(child, id, data, Optional.of(earlier), Written.required(reason, TreatmentFact.REMARK_LENGTH));
    }

    /** Withdraws a procedure that should not be on this child; it stays visible as withdrawn. */
    public RecordOutcome withdraw(ChildId child, ProcedureId earlier, ProcedureId id, String reason) {
        var site = procedures.lock(child).orElseThrow(() -> noSuch(child));
        if (procedures.isKept(child, id)) {
            return new RecordOutcome.Recorded();
        }
        var record = reader.record(child);
        var before = standing(record, earlier);
        if (before.isEmpty()) {
            return supersededMeanwhile();
        }
        before.flatMap(Procedure::data).ifPresent(data -> demandRole(data, site));
        var why = Written.required(reason, TreatmentFact.REMARK_LENGTH);
        var withdrawal = procedure(id, site, before.get().on(), Optional.empty(), Optional.of(earlier), why);
        var stops = Misfit.stops(record, record.with(withdrawal));
        if (stops.isEmpty()) {
            stock.book(site, record, withdrawal);
            procedures.add(child, withdrawal, staff.find().orElse(null));
            events.publishEvent(new ProcedureWithdrawn(
                    child,
                    site,
                    earlier.value(),
                    Procedure.first(record.procedures(), earlier).value()));
            events.publishEvent(new TreatmentChanged(child, site));
        }
        return RecordOutcome.of(stops);
    }

    private RecordOutcome keep(
            ChildId child, ProcedureId id, ProcedureData data, Optional<ProcedureId> earlier, @Nullable String reason) {
        var site = procedures.lock(child).orElseThrow(() -> noSuch(child));
        if (procedures.isKept(child, id)) {
            return new RecordOutcome.Recorded();
        }
        demandRole(data, site);
        var record = reader.record(child);
        if (earlier.isPresent() && standing(record, earlier.get()).isEmpty()) {
            return supersededMeanwhile();
        }
        var without = earlier.map(one -> record.with(procedure(id, site, data.on(), Optional.empty(), earlier, reason)))
                .orElse(record);
        var checked = sides.check(reader.treatment(child, site, without).freeing(earlier), data);
        var whole = procedure(id, site, data.on(), Optional.of(data.withActs(checked.acts())), earlier, reason);
        var stops = Stream.of(
                        impossibleDay(child, site, data.on()),
                        checked.stops().stream(),
                        Misfit.stops(record, record.with(whole)).stream())
                .flatMap(some -> some)
                .toList();
        if (stops.isEmpty()) {
            procedures.add(child, stock.book(site, record, whole), staff.find().orElse(null));
            tell(child, site, whole, data, Procedure.first(record.with(whole).procedures(), id));
        }
        return RecordOutcome.of(stops);
    }

    private void tell(ChildId child, SiteId site, Procedure whole, ProcedureData data, ProcedureId first) {
        var physes = data.acts().stream()
                .flatMap(act -> act.physis().stream())
                .distinct()
                .toList();
        events.publishEvent(new ProcedureRecorded(
                child,
                site,
                physes,
                data.next(),
                whole.id().value(),
                whole.supersedes().map(ProcedureId::value),
                first.value()));
        events.publishEvent(new TreatmentChanged(child, site));
    }

    private Procedure procedure(
            ProcedureId id,
            SiteId site,
            LocalDate on,
            Optional<ProcedureData> data,
            Optional<ProcedureId> earlier,
            @Nullable String reason) {
        return new Procedure(id, site, on, data, null, clock.instant().truncatedTo(ChronoUnit.MICROS), earlier, reason);
    }

    private static Optional<Procedure> standing(TreatmentRecord record, ProcedureId id) {
        return Procedure.standing(record.procedures()).stream()
                .filter(one -> one.id().equals(id))
                .findFirst();
    }

    private Stream<Stop> impossibleDay(ChildId child, SiteId site, LocalDate on) {
        boolean possible =
                !on.isAfter(reader.today(site)) && patients.ageOn(child, on).isPresent();
        return possible ? Stream.empty() : Stream.of(Stop.of(Stop.Reason.DAY_IMPOSSIBLE, 0));
    }

    /** What needs theatre is recorded by a surgeon; a job of the house speaks for the hospital. */
    private void demandRole(ProcedureData data, SiteId site) {
        boolean nurses = data.acts().stream().allMatch(act -> act.kind().isOutsideTheatre());
        if (!nurses && staff.find().isPresent() && !staff.has(Role.SURGEON, site)) {
            throw new AccessDeniedException("a surgeon records what was done in theatre");
        }
    }

    private static RecordOutcome supersededMeanwhile() {
        return RecordOutcome.of(List.of(Stop.of(Stop.Reason.SUPERSEDED_MEANWHILE, 0)));
    }

    private static IllegalArgumentException noSuch(ChildId child) {
        return new IllegalArgumentException("no such child: " + child);
    }
}
