package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.science.quantity.Side;

/**
 * All that was done to a child's limbs and is meant to be done, and where each physis stands by it today.
 *
 * @param site the hospital that has care
 * @param procedures as written, the newest last, superseded ones too
 * @param physes those that are followed and those anything was done to, the right first
 * @param limbs the right first
 * @param tethers all that ever held a physis, the first first
 * @param pieces what went in and came out, piece by piece
 * @param plans those that stand, done ones too
 */
public record Treatment(
        ChildId child,
        SiteId site,
        LocalDate today,
        List<Procedure> procedures,
        List<PhysisStanding> physes,
        List<LimbStanding> limbs,
        List<Tether> tethers,
        PieceLedger pieces,
        List<StandingPlan> plans,
        FactLog<Target> targets,
        FactLog<ImplantFinding> findings,
        FactLog<Maturity> maturities,
        FactLog<CareStep> careSteps,
        FactLog<Complication> complications,
        FactLog<TheatreCheck> checks,
        List<Reversal> reversals) {

    public Treatment {
        procedures = List.copyOf(procedures);
        physes = List.copyOf(physes);
        limbs = List.copyOf(limbs);
        tethers = List.copyOf(tethers);
        plans = List.copyOf(plans);
        reversals = List.copyOf(reversals);
    }

    static Treatment of(
            ChildId child,
            SiteId site,
            LocalDate today,
            TreatmentRecord record,
            List<PhysisKey> followed,
            List<Reversal> reversals) {
        var derived = new Derivation(record);
        var touched = derived.tethers().stream().map(Tether::physis);
        var planned = derived.plans().stream().flatMap(plan -> plan.plan().physis().stream());
        var physes = Stream.of(followed.stream(), touched, planned)
                .flatMap(keys -> keys)
                .distinct()
                .map(key -> derived.physis(key, today))
                .toList();
        var limbs = Stream.of(Side.RIGHT, Side.LEFT)
                .map(side -> derived.limb(side, physes, today))
                .toList();
        return new Treatment(
                child,
                site,
                today,
                record.procedures(),
                physes,
                limbs,
                derived.tethers(),
                PieceLedger.of(record.deeds()),
                derived.plans(),
                record.targets(),
                record.findings(),
                record.maturities(),
                record.careSteps(),
                record.complications(),
                record.checks(),
                reversals);
    }

    public Optional<PhysisStanding> physis(PhysisKey key) {
        return physes.stream().filter(one -> one.physis().equals(key)).findFirst();
    }

    public LimbStanding limb(Side side) {
        return limbs.stream().filter(one -> one.side() == side).findFirst().orElseThrow();
    }

    /** The procedures that stand, by the day they were done. */
    public List<Procedure> standing() {
        return Procedure.standing(procedures);
    }

    /** The days on which a screw of the implant went in anew, alone or with the whole. */
    public List<LocalDate> renewals(ImplantId implant, Screw screw) {
        return standing().stream()
                .filter(procedure -> procedure.data().stream()
                        .flatMap(data -> data.acts().stream())
                        .anyMatch(act ->
                                implant.equals(act.implant()) && act.kind().renews(screw)))
                .map(Procedure::on)
                .toList();
    }

    /** The day a bone of the limb was last cut. */
    public Optional<LocalDate> lastCut(Side side) {
        return standing().stream()
                .filter(procedure -> procedure.data().stream()
                        .flatMap(data -> data.acts().stream())
                        .anyMatch(act -> act.side() == side && act.kind().cutsBone()))
                .map(Procedure::on)
                .max(Comparator.naturalOrder());
    }

    /** What is in today. */
    public List<Tether> tethersIn() {
        return tethers.stream().filter(Tether::isIn).toList();
    }

    /** The plans that wait, listed ones first, then by the day they were decided. */
    public List<StandingPlan> waiting() {
        return plans.stream().filter(StandingPlan::isWaiting).toList();
    }

    public Optional<StandingPlan> plan(FactId id) {
        return plans.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /**
     * Whether growth is over by evidence: a physis was seen closed, and none is planned for, held or watched after
     * release.
     */
    public boolean isSeenClosed() {
        return !maturities.facts().isEmpty()
                && physes.stream()
                        .map(PhysisStanding::state)
                        .allMatch(state -> state == PhysisState.MATURE || state == PhysisState.WATCHED);
    }

    /** Whether something is in that could still turn a bone; what a closed physis keeps does not count. */
    public boolean canStillTurn() {
        return tethersIn().stream().filter(tether -> !tether.isPermanent()).anyMatch(tether -> physis(tether.physis())
                .filter(standing -> standing.state() == PhysisState.MATURE)
                .isEmpty());
    }

    /** Whether any limb is still followed. */
    public boolean isInCare() {
        return limbs.stream().anyMatch(LimbStanding::isInCare);
    }

    /** The same while the procedure is taken back, so that what it rested on can be rested on again. */
    Treatment freeing(Optional<ProcedureId> procedure) {
        var freed = procedure
                .map(one -> reversals.stream()
                        .map(reversal -> reversal.freedFrom(one))
                        .toList())
                .orElse(reversals);
        return new Treatment(
                child,
                site,
                today,
                procedures,
                physes,
                limbs,
                tethers,
                pieces,
                plans,
                targets,
                findings,
                maturities,
                careSteps,
                complications,
                checks,
                freed);
    }
}
