package org.espalier.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.science.quantity.Side;

/** What follows from the facts: the state of each physis on each day, and of each limb today. */
final class Derivation {

    private final TreatmentRecord record;
    private final List<Deed> deeds;
    private final Implants implants;
    private final List<StandingPlan> plans;

    Derivation(TreatmentRecord record) {
        this.record = record;
        deeds = record.deeds();
        implants = Implants.of(deeds, record.findings().facts());
        plans = standingPlans();
    }

    List<Tether> tethers() {
        return implants.tethers();
    }

    List<StandingPlan> plans() {
        return plans;
    }

    /** What cannot have happened as it is written, by its day. */
    List<Misfit> misfits() {
        return Stream.concat(implants.misfits().stream(), Stream.concat(tetheredAfterClosing(), unsettled()))
                .sorted(Comparator.comparing(Misfit::on))
                .toList();
    }

    PhysisStanding physis(PhysisKey key, LocalDate today) {
        return new PhysisStanding(
                key,
                spans(key, today),
                record.targets().facts().stream()
                        .filter(target -> target.isOf(key))
                        .reduce((earlier, later) -> later),
                tethersOf(key).toList(),
                plans.stream()
                        .filter(plan -> plan.isWaiting() && concerns(plan.plan(), key))
                        .toList());
    }

    LimbStanding limb(Side side, List<PhysisStanding> physes, LocalDate today) {
        var state = physes.stream()
                .filter(physis -> physis.physis().side() == side)
                .map(PhysisStanding::state)
                .min(Comparator.naturalOrder())
                .orElse(PhysisState.WATCHED);
        var conditions = new EnumMap<LimbCondition, LocalDate>(LimbCondition.class);
        since(side, today, ProcedureKind.Effect.CAST_ON, ProcedureKind.Effect.CAST_OFF)
                .ifPresent(on -> conditions.put(LimbCondition.IN_CAST, on));
        since(side, today, ProcedureKind.Effect.FRAME_ON, ProcedureKind.Effect.FRAME_OFF)
                .ifPresent(on -> conditions.put(LimbCondition.IN_FRAME, on));
        var step = record.careSteps().facts().stream()
                .filter(one -> one.isOf(side) && !one.on().isAfter(today))
                .reduce((earlier, later) -> later);
        step.ifPresent(one -> addCare(one, conditions));
        return new LimbStanding(
                side,
                state,
                conditions,
                step.flatMap(one -> Optional.ofNullable(one.whyEnded())),
                record.targets().facts().stream()
                        .filter(target -> target.isOfLimb(side))
                        .reduce((earlier, later) -> later));
    }

    private static void addCare(CareStep step, Map<LimbCondition, LocalDate> conditions) {
        switch (step.step()) {
            case ENDED -> conditions.put(LimbCondition.ENDED, step.on());
            case TRANSFERRED -> conditions.put(LimbCondition.TRANSFERRED, step.on());
            case TAKEN_UP -> {
                // In care as before.
            }
        }
    }

    private List<StateSpan> spans(PhysisKey key, LocalDate today) {
        var spans = new ArrayList<StateSpan>();
        spans.add(new StateSpan(PhysisState.WATCHED, Optional.empty(), Why.followed()));
        turningDays(key)
                .filter(day -> !day.isAfter(today))
                .distinct()
                .sorted()
                .map(day -> spanOn(key, day))
                .forEach(span -> {
                    var last = spans.getLast();
                    if (span.state() != last.state()) {
                        spans.add(span);
                    } else if (!span.why().equals(last.why())) {
                        spans.set(spans.size() - 1, new StateSpan(span.state(), last.from(), span.why()));
                    }
                });
        return spans;
    }

    /** The days on which the state may become another. */
    private Stream<LocalDate> turningDays(PhysisKey key) {
        var tethers = tethersOf(key)
                .flatMap(tether -> tether.periods().stream())
                .flatMap(period -> Stream.concat(Stream.of(period.from()), period.to().stream()));
        var planned = plans.stream()
                .filter(plan -> concerns(plan.plan(), key))
                .flatMap(plan ->
                        Stream.concat(Stream.of(plan.plan().on()), plan.done().map(StandingPlan.Done::on).stream()));
        var braced = deeds.stream()
                .filter(deed -> deed.act().side() == key.side())
                .filter(deed -> isBrace(deed.act().kind().effect()))
                .map(Deed::on);
        var closed = closings(key).map(Maturity::on);
        return Stream.of(tethers, planned, braced, closed).flatMap(days -> days);
    }

    private static boolean isBrace(ProcedureKind.Effect effect) {
        return effect == ProcedureKind.Effect.BRACE_ON || effect == ProcedureKind.Effect.BRACE_OFF;
    }

    private StateSpan spanOn(PhysisKey key, LocalDate day) {
        return mature(key, day)
                .or(() -> tethered(key, day))
                .or(() -> planned(key, day))
                .or(() -> released(key, day))
                .or(() -> since(key.side(), day, ProcedureKind.Effect.BRACE_ON, ProcedureKind.Effect.BRACE_OFF)
                        .map(on -> span(PhysisState.BRACED, day, Why.of(Why.Reason.BRACE_ON, on))))
                .orElseGet(() -> span(PhysisState.WATCHED, day, Why.followed()));
    }

    private static StateSpan span(PhysisState state, LocalDate from, Why why) {
        return new StateSpan(state, Optional.of(from), why);
    }

    private Optional<StateSpan> mature(PhysisKey key, LocalDate day) {
        return closings(key)
                .filter(closed -> !closed.on().isAfter(day))
                .reduce((earlier, later) -> later)
                .map(closed -> span(PhysisState.MATURE, day, Why.of(closed)));
    }

    /** What holds decides before what only may. */
    private Optional<StateSpan> tethered(PhysisKey key, LocalDate day) {
        return tethersOf(key)
                .flatMap(tether -> tether.on(day).map(period -> tethered(tether, period, day)).stream())
                .min(Comparator.comparing(StateSpan::state));
    }

    private static StateSpan tethered(Tether tether, TetherPeriod period, LocalDate day) {
        var state = period.hold() == Hold.HOLDS ? PhysisState.TETHERED : PhysisState.PARKED;
        return span(state, day, Why.of(tether, period));
    }

    private Optional<StateSpan> planned(PhysisKey key, LocalDate day) {
        return plans.stream()
                .filter(plan -> plan.waitedOn(day) && concerns(plan.plan(), key))
                .filter(plan ->
                        !plan.plan().kind().isOnImplant() && !plan.plan().kind().takesFixationOut())
                .findFirst()
                .map(plan -> span(
                        PhysisState.PLANNED,
                        day,
                        Why.of(
                                plan.plan().isListed() ? Why.Reason.LISTED : Why.Reason.PLANNED,
                                plan.plan().on())));
    }

    private Optional<StateSpan> released(PhysisKey key, LocalDate day) {
        return tethersOf(key)
                .flatMap(tether -> tether.to().stream())
                .filter(end -> !end.isAfter(day))
                .max(Comparator.naturalOrder())
                .map(end -> span(PhysisState.RELEASED, day, Why.of(Why.Reason.NOTHING_HOLDS, end)));
    }

    /** Since when something is on a limb that goes on and comes off. */
    private Optional<LocalDate> since(
            Side side, LocalDate day, ProcedureKind.Effect putOn, ProcedureKind.Effect takenOff) {
        return deeds.stream()
                .filter(deed -> deed.act().side() == side && !deed.on().isAfter(day))
                .filter(deed ->
                        deed.act().kind().effect() == putOn || deed.act().kind().effect() == takenOff)
                .reduce((earlier, later) -> later)
                .filter(deed -> deed.act().kind().effect() == putOn)
                .map(Deed::on);
    }

    private Stream<Tether> tethersOf(PhysisKey key) {
        return implants.tethers().stream().filter(tether -> tether.physis().equals(key));
    }

    private Stream<Maturity> closings(PhysisKey key) {
        return record.maturities().facts().stream()
                .filter(closed -> closed.physis().equals(key));
    }

    /** A plan for a whole limb, as an osteotomy, concerns the physes at its knee. */
    private static boolean concerns(Plan plan, PhysisKey key) {
        return plan.physis()
                .map(key::equals)
                .orElseGet(() -> !plan.kind().isOutsideTheatre()
                        && PhysisKey.ofKnee(plan.side()).contains(key));
    }

    private List<StandingPlan> standingPlans() {
        return record.plans().standing().stream()
                .flatMap(written -> Optional.ofNullable(written.fact())
                        .map(plan -> new StandingPlan(
                                written.id(), record.plans().first(written), plan, written.by(), done(written)))
                        .stream())
                .toList();
    }

    /** A plan is done by the act that names it, or that named it before it was last changed. */
    private Optional<StandingPlan.Done> done(Written<Plan> written) {
        var names = record.plans().line(written);
        return deeds.stream()
                .filter(deed -> names.contains(deed.act().plan()))
                .findFirst()
                .map(deed -> new StandingPlan.Done(deed.on(), deed.procedure()));
    }

    private Stream<Misfit> tetheredAfterClosing() {
        return record.maturities().facts().stream().flatMap(closed -> tethersOf(closed.physis())
                .filter(tether -> tether.from().isAfter(closed.on()))
                .map(tether -> new Misfit(Misfit.Kind.MATURE_ALREADY, tether.from())));
    }

    private Stream<Misfit> unsettled() {
        return record.maturities().facts().stream()
                .filter(closed -> !closed.settlesImplants())
                .filter(closed -> tethersOf(closed.physis())
                        .anyMatch(tether ->
                                !tether.isPermanent() && tether.on(closed.on()).isPresent()))
                .map(closed -> new Misfit(Misfit.Kind.IMPLANT_UNSETTLED, closed.on()));
    }
}
