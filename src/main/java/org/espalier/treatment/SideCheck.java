package org.espalier.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Stops the wrong limb, the wrong side of the bone, and a tether that would let the deformity grow: varus takes a
 * lateral plate, valgus a medial one. What was done elsewhere is past stopping.
 */
@Component
class SideCheck {

    private final DeformityReader deformities;

    SideCheck(DeformityReader deformities) {
        this.deformities = deformities;
    }

    /** The acts with the plans they fulfil and the reversals they rest on, and what stops them. */
    record Checked(List<Act> acts, List<Stop> stops) {}

    Checked check(Treatment treatment, ProcedureData data) {
        var acts = new ArrayList<Act>();
        var stops = new ArrayList<Stop>();
        for (int place = 0; place < data.acts().size(); place++) {
            var act = data.acts().get(place);
            var plan = fulfilled(treatment, act);
            var reversal = plateSide(act).flatMap(side -> reversal(treatment, act.physis(), side));
            acts.add(act.restingOn(
                    plan.map(StandingPlan::id).orElse(null),
                    reversal.map(Reversal::id).orElse(null)));
            if (!data.elsewhere()) {
                stopped(treatment, data, act, plan, reversal, place).ifPresent(stops::add);
            }
        }
        return new Checked(acts, stops);
    }

    /** Why the plan may not stand as it is. */
    Optional<Stop> check(Treatment treatment, Plan plan) {
        var side = plan.plateSide();
        if (side == null || !plan.kind().turnsBone() && plan.kind() != ProcedureKind.PLATE_MOVED) {
            return Optional.empty();
        }
        return reversal(treatment, plan.physis(), side).isPresent()
                ? Optional.empty()
                : against(plan.deformity(), side, 0)
                        .or(() -> against(treatment, plan.physis(), side, treatment.today(), 0));
    }

    private Optional<Stop> stopped(
            Treatment treatment,
            ProcedureData data,
            Act act,
            Optional<StandingPlan> plan,
            Optional<Reversal> reversal,
            int place) {
        var elsewhere = plan.isPresent() ? Optional.<Stop>empty() : notAsPlanned(treatment, data, act, place);
        if (elsewhere.isPresent() || reversal.isPresent()) {
            return elsewhere;
        }
        return plateSide(act)
                .flatMap(side -> plan.flatMap(one -> against(one.plan().deformity(), side, place))
                        .or(() -> against(treatment, act.physis(), side, data.on(), place)));
    }

    /** The side that comes to hold the physis; empty for an act that changes no side. */
    private static Optional<PlateSide> plateSide(Act act) {
        boolean decides = act.kind().turnsBone() || act.kind() == ProcedureKind.PLATE_MOVED;
        return decides ? Optional.ofNullable(act.plateSide()) : Optional.empty();
    }

    private static Optional<Stop> against(@Nullable Deformity deformity, PlateSide side, int place) {
        return deformity != null && side.worsens(deformity)
                ? Optional.of(
                        new Stop(Stop.Reason.AGAINST_THE_PLAN, place, Optional.of(side.opposite()), Optional.empty()))
                : Optional.empty();
    }

    private Optional<Stop> against(
            Treatment treatment, Optional<PhysisKey> physis, PlateSide side, LocalDate day, int place) {
        return physis.flatMap(key -> measured(treatment, key, day))
                .filter(measured -> side.worsens(measured.deformity()))
                .map(measured -> new Stop(
                        Stop.Reason.AGAINST_THE_READING, place, Optional.of(side.opposite()), Optional.of(measured)));
    }

    Optional<MeasuredDeformity> measured(Treatment treatment, PhysisKey physis, LocalDate day) {
        var target =
                treatment.physis(physis).map(PhysisStanding::targetAngle).orElseGet(() -> Target.byDefault(physis));
        return deformities.of(treatment.site(), treatment.child(), physis, target, day);
    }

    private static Optional<Reversal> reversal(Treatment treatment, Optional<PhysisKey> physis, PlateSide side) {
        return physis.flatMap(key -> treatment.reversals().stream()
                .filter(one -> one.covers(key, side))
                .findFirst());
    }

    private static Optional<StandingPlan> fulfilled(Treatment treatment, Act act) {
        return alike(treatment, act)
                .filter(plan -> plan.plan().physis().equals(act.physis())
                        && plan.plan().side() == act.side()
                        && plan.plan().plateSide() == act.plateSide())
                .findFirst();
    }

    /** A plan for the same on another limb, or on another side of the bone, when none fits. */
    private static Optional<Stop> notAsPlanned(Treatment treatment, ProcedureData data, Act act, int place) {
        return alike(treatment, act)
                .filter(plan -> !plan.plan().on().isAfter(data.on()))
                .filter(plan -> plan.plan().bone() == act.bone() && plan.plan().end() == act.end())
                .sorted(Comparator.comparing(plan -> plan.plan().side() != act.side()))
                .findFirst()
                .map(plan -> new Stop(
                        plan.plan().side() == act.side()
                                ? Stop.Reason.PLANNED_ON_OTHER_SIDE_OF_BONE
                                : Stop.Reason.PLANNED_ON_OTHER_LIMB,
                        place,
                        Optional.ofNullable(plan.plan().plateSide()),
                        Optional.empty()));
    }

    private static Stream<StandingPlan> alike(Treatment treatment, Act act) {
        return treatment.waiting().stream().filter(plan -> plan.plan().kind() == act.kind());
    }
}
