package org.espalier.treatment;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SignAgain;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.patient.PatientService;
import org.espalier.treatment.JdbcTreatmentFactRepository.Entry;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What is written down beside the procedures: plans, targets, what was seen of implants, closed physes, the end of
 * care, complications, checks. Nothing is changed: a later fact stands in place of an earlier one.
 */
@Service
@Transactional
public class TreatmentFactService {

    private final TreatmentReader reader;
    private final JdbcTreatmentFactRepository facts;
    private final JdbcProcedureRepository procedures;
    private final SideCheck sides;
    private final PatientService patients;
    private final CurrentStaff staff;
    private final SignAgain signAgain;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    TreatmentFactService(
            TreatmentReader reader,
            JdbcTreatmentFactRepository facts,
            JdbcProcedureRepository procedures,
            SideCheck sides,
            PatientService patients,
            CurrentStaff staff,
            SignAgain signAgain,
            ApplicationEventPublisher events,
            Clock clock) {
        this.reader = reader;
        this.facts = facts;
        this.procedures = procedures;
        this.sides = sides;
        this.patients = patients;
        this.staff = staff;
        this.signAgain = signAgain;
        this.events = events;
        this.clock = clock;
    }

    /** Writes a fact down. Sent again with the same id it is kept once. */
    public RecordOutcome record(ChildId child, FactId id, TreatmentFact fact) {
        return keep(child, id, FactTable.of(fact), fact, null, null);
    }

    /** Writes a fact down in place of an earlier one of the same kind. */
    public RecordOutcome replace(ChildId child, FactId earlier, FactId id, TreatmentFact fact, String reason) {
        return keep(child, id, FactTable.of(fact), fact, earlier, required(reason));
    }

    /** Withdraws a fact; it stays visible as withdrawn. */
    public RecordOutcome withdraw(ChildId child, FactId earlier, TreatmentFact fact, FactId id, String reason) {
        return keep(child, id, FactTable.of(fact), null, earlier, required(reason));
    }

    private <F extends TreatmentFact> RecordOutcome keep(
            ChildId child,
            FactId id,
            FactTable<F> table,
            @Nullable F fact,
            @Nullable FactId earlier,
            @Nullable String reason) {
        var site = procedures.lock(child).orElseThrow(() -> new IllegalArgumentException("no such child: " + child));
        if (facts.isKept(table, child, id)) {
            return new RecordOutcome.Recorded();
        }
        var log = facts.all(table, child);
        var before = Optional.ofNullable(earlier).flatMap(log::find);
        demandRole(table, before.map(Written::fact).orElse(null), fact, site);
        if (earlier != null && (before.isEmpty() || log.isSuperseded(earlier))) {
            return RecordOutcome.of(List.of(Stop.of(Stop.Reason.SUPERSEDED_MEANWHILE, 0)));
        }
        var now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        var written = new Written<>(id, fact, null, now, earlier, reason);
        var stops = stops(child, site, table, written);
        if (stops.isEmpty()) {
            if (table == FactTable.TARGETS && staff.find().isPresent()) {
                signAgain.prove();
            }
            var on = fact == null
                    ? before.map(Written::fact).map(TreatmentFact::on).orElseThrow()
                    : fact.on();
            facts.add(table, new Entry<>(child, id, on, fact, staff.find().orElse(null), now, earlier, reason));
            events.publishEvent(new TreatmentChanged(child, site));
        }
        return RecordOutcome.of(stops);
    }

    private <F extends TreatmentFact> List<Stop> stops(
            ChildId child, SiteId site, FactTable<F> table, Written<F> written) {
        var record = reader.record(child);
        var fact = written.fact();
        var own = fact == null ? Stream.<Stop>empty() : stops(child, site, record, fact);
        return Stream.concat(own, Misfit.stops(record, record.with(table, written)).stream())
                .toList();
    }

    private Stream<Stop> stops(ChildId child, SiteId site, TreatmentRecord record, TreatmentFact fact) {
        if (fact.on().isAfter(reader.today(site))
                || patients.ageOn(child, fact.on()).isEmpty()) {
            return Stream.of(Stop.of(Stop.Reason.DAY_IMPOSSIBLE, 0));
        }
        return switch (fact) {
            case Plan plan -> sides.check(reader.treatment(child, site, record), plan).stream();
            case CareStep step when step.whyEnded() == CareStep.EndReason.STRAIGHT -> stillIn(record, step);
            default -> Stream.empty();
        };
    }

    /** A limb is let go as straight only when nothing is in that could turn it. */
    private static Stream<Stop> stillIn(TreatmentRecord record, CareStep step) {
        return new Derivation(record)
                .tethers().stream()
                        .filter(tether -> tether.isIn() && !tether.isPermanent())
                        .filter(tether -> step.isOf(tether.physis().side()))
                        .filter(tether -> !isMature(record, tether.physis(), step.on()))
                        .limit(1)
                        .map(tether -> Stop.of(Stop.Reason.STRAIGHT_WITH_IMPLANT, 0));
    }

    private static boolean isMature(TreatmentRecord record, PhysisKey physis, LocalDate day) {
        return record.maturities().facts().stream()
                .anyMatch(
                        closed -> closed.physis().equals(physis) && !closed.on().isAfter(day));
    }

    /** Plans, targets and closed physes are the surgeon's; a nurse may ask for theatre for what is planned. */
    private void demandRole(
            FactTable<?> table, @Nullable TreatmentFact before, @Nullable TreatmentFact fact, SiteId site) {
        boolean surgeons = table == FactTable.TARGETS
                || table == FactTable.MATURITIES
                || table == FactTable.PLANS && !isListing(before, fact);
        if (surgeons && staff.find().isPresent() && !staff.has(Role.SURGEON, site)) {
            throw new AccessDeniedException("a surgeon decides this");
        }
    }

    private static boolean isListing(@Nullable TreatmentFact before, @Nullable TreatmentFact fact) {
        return before instanceof Plan earlier
                && fact instanceof Plan later
                && Objects.equals(later, earlier.listed(later.askedOn(), later.theatreOn(), later.pastTarget()));
    }

    private static String required(String reason) {
        return Written.required(reason, TreatmentFact.REMARK_LENGTH);
    }
}
