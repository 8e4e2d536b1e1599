package org.espalier.demo;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.demo.drawn.DrawnPlate;
import org.espalier.followup.Happening;
import org.espalier.followup.VisitReason;
import org.espalier.followup.VisitService;
import org.espalier.followup.VisitState;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.treatment.Act;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.Deformity;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.Piece;
import org.espalier.treatment.Plan;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * Lets the care of a story happen in its order: the visits the child was brought to and those it was not, the
 * operations, the plans that wait. Each step may be repeated; what is there already stays as it is.
 */
@Component
@Profile("demo")
class DemoCare {

    private static final int FIRST_LOOK_MONTHS = 3;

    private final TreatmentService treatments;
    private final TreatmentFactService facts;
    private final VisitService visits;
    private final DemoPieces pieces;

    DemoCare(TreatmentService treatments, TreatmentFactService facts, VisitService visits, DemoPieces pieces) {
        this.treatments = treatments;
        this.facts = facts;
        this.visits = visits;
        this.pieces = pieces;
    }

    void tell(DemoStory story, DemoTeam team, LocalDate firstDay) {
        days(story, team, firstDay, visit -> {}).values().forEach(steps -> steps.forEach(Runnable::run));
        story.plans().forEach(plan -> plan(story, team, plan, firstDay));
    }

    /**
     * What happened but for what still waits, by its day.
     *
     * @param film what else is done on the day of a visit
     */
    SortedMap<LocalDate, List<Runnable>> days(
            DemoStory story, DemoTeam team, LocalDate firstDay, Consumer<DemoVisit> film) {
        SortedMap<LocalDate, List<Runnable>> days = new TreeMap<>();
        for (DemoVisit visit : story.visits()) {
            LocalDate day = story.dayOf(visit, firstDay);
            add(days, day, () -> close(story, team, VisitState.ARRIVED, new Happening.Arrived(day, Optional.empty())));
            add(days, day, () -> film.accept(visit));
        }
        for (int age : story.missed()) {
            LocalDate day = story.dayAt(age, firstDay);
            var missed = new Happening.NotBrought(day, reason(age), "");
            add(days, day, () -> close(story, team, VisitState.NOT_BROUGHT, missed));
        }
        story.deeds().stream()
                .collect(Collectors.groupingBy(DemoDeed::ageMonths))
                .forEach((age, deeds) -> {
                    LocalDate day = story.dayAt(age, firstDay).plusDays(1);
                    add(days, day, () -> operate(story, team, day, deeds, firstDay));
                });
        return days;
    }

    /** Care of both limbs ends: they stayed straight until growth was over. */
    void end(DemoStory story, DemoTeam team, LocalDate day) {
        var ended = new CareStep(day, null, CareStep.Step.ENDED, CareStep.EndReason.STRAIGHT, null);
        var id = new FactId(DemoIds.of(story.number(), "ended"));
        Callers.runAs(new Caller.Staff(team.surgeon().value()), () -> facts.record(child(story), id, ended));
    }

    private static void add(Map<LocalDate, List<Runnable>> days, LocalDate day, Runnable step) {
        days.merge(day, List.of(step), (before, more) -> Stream.concat(before.stream(), more.stream())
                .toList());
    }

    private static VisitReason reason(int age) {
        VisitReason[] told = {VisitReason.FORGOTTEN, VisitReason.DISTANCE, VisitReason.NOT_SAID, VisitReason.SCHOOL};
        return told[age % told.length];
    }

    private void close(DemoStory story, DemoTeam team, VisitState state, Happening happening) {
        Callers.runAs(new Caller.Staff(team.nurse().value()), () -> {
            var known = visits.of(child(story));
            boolean told = known.past().stream()
                    .anyMatch(visit -> visit.state() == state && visit.day().equals(day(happening)));
            if (!told) {
                visits.record(known.open().orElseThrow(), happening);
            }
        });
    }

    private static LocalDate day(Happening happening) {
        return switch (happening) {
            case Happening.Arrived arrived -> arrived.on();
            case Happening.NotBrought missed -> missed.on();
            default -> throw new IllegalArgumentException("not told in the demonstration: " + happening);
        };
    }

    private void operate(DemoStory story, DemoTeam team, LocalDate day, List<DemoDeed> deeds, LocalDate firstDay) {
        List<Piece> placed = Callers.callAs(new Caller.Staff(team.surgeon().value()), () -> pieces.of(day, firstDay));
        List<Act> acts = deeds.stream()
                .sorted(Comparator.comparing(DemoDeed::side).thenComparing(DemoDeed::bone))
                .map(deed -> act(story, deed))
                .map(act -> act.kind() == ProcedureKind.PLATE_PLACED ? act.withPieces(placed) : act)
                .toList();
        var next = new NextLook(day.plusMonths(FIRST_LOOK_MONTHS), "Standing film after the operation");
        var data = new ProcedureData(day, false, null, null, acts, next);
        var id = new ProcedureId(DemoIds.of(story.number(), "procedure " + day));
        RecordOutcome outcome = Callers.callAs(
                new Caller.Staff(team.surgeon().value()), () -> treatments.record(child(story), id, data));
        if (outcome instanceof RecordOutcome.Stopped stopped) {
            throw new IllegalStateException("the operation of " + story.number() + " was stopped: " + stopped.stops());
        }
    }

    private static Act act(DemoStory story, DemoDeed deed) {
        PhysisKey physis = physis(deed);
        return switch (deed.what()) {
            case PLATE_PLACED ->
                Act.of(
                        ProcedureKind.PLATE_PLACED,
                        physis,
                        side(deed.face()),
                        plate(story, deed.ageMonths(), deed),
                        "Two-hole plate, two screws of 4.5 × 24 mm (invented)",
                        3);
            case METAPHYSEAL_SCREW_OUT ->
                Act.of(
                        ProcedureKind.METAPHYSEAL_SCREW_OUT,
                        physis,
                        side(deed.face()),
                        placed(story, deed),
                        "Metaphyseal screw",
                        1);
            case PLATE_OUT ->
                Act.of(
                        ProcedureKind.PLATE_OUT,
                        physis,
                        side(deed.face()),
                        placed(story, deed),
                        "Plate and both screws",
                        3);
            case OSTEOTOMY -> Act.of(ProcedureKind.OSTEOTOMY, physis, null, null, "Wires, cast", 2);
            case FRAME_ON -> Act.ofLimb(ProcedureKind.FRAME_ON, deed.side(), "Circular frame (invented)", 1);
            case FRAME_OFF -> Act.ofLimb(ProcedureKind.FRAME_OFF, deed.side(), "Circular frame", 1);
        };
    }

    /** The plate that a later deed on the same physis is about: the last one placed before it. */
    private static ImplantId placed(DemoStory story, DemoDeed deed) {
        int since = story.deeds().stream()
                .filter(one -> one.what() == DemoDeed.What.PLATE_PLACED
                        && one.side() == deed.side()
                        && one.bone() == deed.bone()
                        && one.ageMonths() < deed.ageMonths())
                .mapToInt(DemoDeed::ageMonths)
                .max()
                .orElseThrow();
        return plate(story, since, deed);
    }

    private static ImplantId plate(DemoStory story, int since, DemoDeed deed) {
        return new ImplantId(DemoIds.of(story.number(), "plate " + since + deed.side() + deed.bone()));
    }

    private void plan(DemoStory story, DemoTeam team, DemoPlan told, LocalDate firstDay) {
        LocalDate day = story.dayAt(told.ageMonths(), firstDay);
        DemoDeed deed = told.deed();
        boolean places = deed.what() == DemoDeed.What.PLATE_PLACED;
        Plan decided = Plan.decided(
                day,
                places ? ProcedureKind.PLATE_PLACED : ProcedureKind.PLATE_OUT,
                physis(deed),
                side(deed.face()),
                deed.face() == DrawnPlate.Face.LATERAL ? Deformity.VARUS : Deformity.VALGUS);
        Plan plan = told.theatreInDays().isPresent()
                ? decided.listed(day, firstDay.plusDays(told.theatreInDays().getAsInt()), null)
                : decided;
        var id = new FactId(DemoIds.of(story.number(), "plan " + told.ageMonths() + deed.side() + deed.bone()));
        Callers.runAs(new Caller.Staff(team.surgeon().value()), () -> facts.record(child(story), id, plan));
    }

    private static PhysisKey physis(DemoDeed deed) {
        return deed.bone() == DrawnPlate.Bone.FEMUR
                ? new PhysisKey(deed.side(), Bone.FEMUR, BoneEnd.DISTAL)
                : new PhysisKey(deed.side(), Bone.TIBIA, BoneEnd.PROXIMAL);
    }

    private static PlateSide side(DrawnPlate.Face face) {
        return face == DrawnPlate.Face.MEDIAL ? PlateSide.MEDIAL : PlateSide.LATERAL;
    }

    private static ChildId child(DemoStory story) {
        return new ChildId(DemoIds.of("child", story.number()));
    }
}
