package org.espalier.treatment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.espalier.treatment.TestTreatment.FEMUR;
import static org.espalier.treatment.TestTreatment.TIBIA;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.film.TestDoor.Sender;
import org.espalier.followup.VisitService;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.access.AccessDeniedException;

@IntegrationTest
class TreatmentServiceIntegrationTests {

    private static final LocalDate BORN = LocalDate.of(2016, 5, 20);
    private static final LocalDate DAY = LocalDate.of(2025, 6, 10);

    @Autowired
    TreatmentService treatments;

    @Autowired
    TreatmentFactService facts;

    @Autowired
    ReversalService reversals;

    @Autowired
    TheatreService theatre;

    @Autowired
    VisitService visits;

    @Autowired
    RefusingListener listener;

    @Autowired
    TestReader reader;

    @Autowired
    TestNetwork network;

    @Autowired
    Ids ids;

    Sender surgeon;
    ChildId child;
    ImplantId plate;

    @BeforeEach
    void aChild() {
        surgeon = reader.surgeon();
        child = reader.child(surgeon, BORN);
        plate = new ImplantId(ids.next());
    }

    @Test
    void keepsEverythingThatWasSaidOfAProcedure() {
        var act = new Act(
                ProcedureKind.PLATE_PLACED,
                FEMUR.side(),
                FEMUR.bone(),
                FEMUR.end(),
                PlateSide.LATERAL,
                plate,
                "plate, 2 screws 24 mm",
                3,
                java.util.Map.of(Question.EXTRAPERIOSTEAL, "YES"),
                null,
                null);
        var cast = Act.ofLimb(ProcedureKind.CAST_ON, Side.LEFT, "none", 0);
        var data = new ProcedureData(
                DAY, false, "A. Surgeon", "both limbs", List.of(act, cast), new NextLook(DAY.plusDays(14), "wound"));
        assertThat(record(new ProcedureId(ids.next()), data).isRecorded()).isTrue();
        var kept = of().standing().getFirst();
        assertThat(kept.data()).contains(data);
        assertThat(kept.by()).startsWith("Test person");
        assertThat(of().limb(Side.LEFT).conditions()).containsKey(LimbCondition.IN_CAST);
        assertThat(of().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.TETHERED);
    }

    @Test
    void keepsOnceWhatIsSentTwice() {
        var id = new ProcedureId(ids.next());
        for (int time = 0; time < 2; time++) {
            assertThat(record(id, placed(PlateSide.LATERAL)).isRecorded()).isTrue();
        }
        assertThat(of().procedures()).hasSize(1);
    }

    @Test
    void opensTheNextVisitInTheSameTransaction() {
        var today = of().today();
        record(TestTreatment.plate(today, FEMUR, PlateSide.LATERAL, plate));
        var open = surgeon.does(() -> visits.of(child)).open().orElseThrow();
        assertThat(open.asked().orElseThrow().by()).isEqualTo(today.plusDays(84));
    }

    @Test
    void keepsNothingWhenAnythingThatHangsOnItRefuses() {
        var before = surgeon.does(() -> visits.of(child)).open();
        listener.refuse(child);
        assertThatThrownBy(() -> record(placed(PlateSide.LATERAL))).hasMessage("nothing of it is left on the shelf");
        assertThat(of().procedures()).isEmpty();
        assertThat(surgeon.does(() -> visits.of(child)).open()).isEqualTo(before);
        listener.accept(child);
        assertThat(record(placed(PlateSide.LATERAL)).isRecorded()).isTrue();
    }

    @Test
    void letsOneOfTwoWhoRecordTheSameRemovalAtOnce() throws Exception {
        record(placed(PlateSide.LATERAL));
        var colleague = reader.colleague(surgeon);
        var out = TestTreatment.of(
                DAY.plusDays(300),
                Act.of(ProcedureKind.PLATE_OUT, FEMUR, PlateSide.LATERAL, plate, "plate, 2 screws", 3));
        try (var both = Executors.newFixedThreadPool(2)) {
            var outcomes = both.invokeAll(List.<Callable<RecordOutcome>>of(
                    () -> surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), out)),
                    () -> colleague.does(() -> treatments.record(child, new ProcedureId(ids.next()), out))));
            var first = outcomes.getFirst().get();
            var second = outcomes.getLast().get();
            assertThat(List.of(first.isRecorded(), second.isRecorded())).containsExactlyInAnyOrder(true, false);
            assertThat(List.of(first, second)).anySatisfy(stopped -> assertStopped(stopped, Stop.Reason.NOT_IN));
        }
        assertThat(of().procedures()).hasSize(2);
        assertThat(of().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.RELEASED);
    }

    @Test
    void showsBothTheCorrectedAndTheCorrection() {
        var wrong = new ProcedureId(ids.next());
        record(wrong, placed(PlateSide.LATERAL));
        var right = TestTreatment.plate(DAY, TIBIA, PlateSide.LATERAL, plate);
        assertThat(correct(wrong, right).isRecorded()).isTrue();
        assertStopped(correct(wrong, right), Stop.Reason.SUPERSEDED_MEANWHILE);
        assertThat(of().procedures()).hasSize(2);
        assertThat(of().standing()).hasSize(1);
        assertThat(of().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.WATCHED);
        assertThat(of().physis(TIBIA).orElseThrow().state()).isEqualTo(PhysisState.TETHERED);
    }

    @Test
    void withdrawsNothingOnWhichSomethingLaterRests() {
        var placing = new ProcedureId(ids.next());
        record(placing, placed(PlateSide.LATERAL));
        record(TestTreatment.of(
                DAY.plusDays(9),
                Act.of(ProcedureKind.METAPHYSEAL_SCREW_OUT, FEMUR, PlateSide.LATERAL, plate, "screw", 1)));
        assertStopped(withdraw(placing), Stop.Reason.NOT_IN);
        var screw = of().standing().getLast().id();
        assertThat(withdraw(screw).isRecorded()).isTrue();
        assertThat(withdraw(placing).isRecorded()).isTrue();
        assertThat(of().standing()).isEmpty();
        assertThat(of().procedures()).hasSize(4);
    }

    @Test
    void letsANurseRecordACastAndNoPlate() {
        var nurse = new Sender(network.staff(surgeon.site().value(), "NURSE"), surgeon.site());
        var cast = TestTreatment.of(DAY, Act.ofLimb(ProcedureKind.CAST_ON, Side.RIGHT, "none", 0));
        assertThat(nurse.does(() -> treatments.record(child, new ProcedureId(ids.next()), cast))
                        .isRecorded())
                .isTrue();
        assertThatThrownBy(() -> nurse.does(
                        () -> treatments.record(child, new ProcedureId(ids.next()), placed(PlateSide.LATERAL))))
                .isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void letsANurseListWhatASurgeonPlannedAndChangeNothingElse() {
        var plan = plan(ProcedureKind.PLATE_PLACED, FEMUR, PlateSide.LATERAL);
        var nurse = new Sender(network.staff(surgeon.site().value(), "NURSE"), surgeon.site());
        var planned = of().plan(plan).orElseThrow().plan();
        var listed = planned.listed(DAY.plusDays(3), DAY.plusDays(30), null);
        var onFemur = new FactId(ids.next());
        assertThat(nurse.does(() -> facts.replace(child, plan, onFemur, listed, "the family can come"))
                        .isRecorded())
                .isTrue();
        var other = Plan.decided(DAY, ProcedureKind.PLATE_PLACED, TIBIA, PlateSide.LATERAL, Deformity.VARUS);
        assertThatThrownBy(() ->
                        nurse.does(() -> facts.replace(child, onFemur, new FactId(ids.next()), other, "on the tibia")))
                .isInstanceOf(AccessDeniedException.class);
        var cases = surgeon.does(() -> theatre.list(surgeon.site(), DAY.plusDays(30)));
        assertThat(cases).hasSize(1);
        assertThat(cases.getFirst().plans()).containsExactly(listed);
        assertThat(nurse.does(() -> theatre.next(surgeon.site(), DAY.plusDays(3))))
                .contains(DAY.plusDays(30));
        assertThat(nurse.does(() -> theatre.next(surgeon.site(), DAY.plusDays(30))))
                .isEmpty();
    }

    @Test
    void fulfilsThePlanThatIsDone() {
        plan(ProcedureKind.PLATE_PLACED, FEMUR, PlateSide.LATERAL);
        assertThat(of().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.PLANNED);
        record(placed(PlateSide.LATERAL));
        assertThat(of().waiting()).isEmpty();
        assertThat(of().plans().getFirst().done()).isPresent();
    }

    @Test
    void stopsTheOtherLimbAndTheOtherSideOfTheBone() {
        plan(ProcedureKind.PLATE_PLACED, FEMUR, PlateSide.LATERAL);
        var left = new PhysisKey(Side.LEFT, FEMUR.bone(), FEMUR.end());
        assertStopped(
                record(TestTreatment.plate(DAY, left, PlateSide.LATERAL, plate)), Stop.Reason.PLANNED_ON_OTHER_LIMB);
        assertStopped(
                record(TestTreatment.plate(DAY, FEMUR, PlateSide.ANTERIOR, plate)),
                Stop.Reason.PLANNED_ON_OTHER_SIDE_OF_BONE);
        assertThat(of().procedures()).isEmpty();
    }

    @Test
    void givesVarusALateralPlateAndValgusAMedialOne() {
        assertStopped(decide(PlateSide.MEDIAL, Deformity.VARUS), Stop.Reason.AGAINST_THE_PLAN);
        assertStopped(decide(PlateSide.LATERAL, Deformity.VALGUS), Stop.Reason.AGAINST_THE_PLAN);
        assertThat(decide(PlateSide.LATERAL, Deformity.VARUS).isRecorded()).isTrue();
    }

    @Test
    void stopsAPlateThatTheLatestReadingSpeaksAgainst() {
        reader.signed(surgeon, reader.film(surgeon, child, DAY.minusDays(20)));
        target(new Angle(110));
        var stopped = record(placed(PlateSide.LATERAL));
        assertStopped(stopped, Stop.Reason.AGAINST_THE_READING);
        var stop = ((RecordOutcome.Stopped) stopped).stops().getFirst();
        assertThat(stop.wanted()).contains(PlateSide.MEDIAL);
        assertThat(stop.deformity().orElseThrow().deformity()).isEqualTo(Deformity.VALGUS);
        assertThat(record(placed(PlateSide.MEDIAL)).isRecorded()).isTrue();
    }

    @Test
    void letsADeliberateReversalPassWhenTwoAgreedAndOnlyOnce() {
        reader.signed(surgeon, reader.film(surgeon, child, DAY.minusDays(20)));
        target(new Angle(110));
        var reversal = ids.next();
        surgeon.does(() -> reversals.ask(child, reversal, FEMUR, PlateSide.LATERAL, "it rebounded beyond"));
        assertStopped(record(placed(PlateSide.LATERAL)), Stop.Reason.AGAINST_THE_READING);
        assertThat(surgeon.does(() -> reversals.consent(child, reversal)))
                .isEqualTo(ReversalService.Consent.SAME_PERSON);
        var colleague = reader.colleague(surgeon);
        assertThat(colleague.does(() -> reversals.consent(child, reversal))).isEqualTo(ReversalService.Consent.GIVEN);
        assertThat(record(placed(PlateSide.LATERAL)).isRecorded()).isTrue();
        var kept = of().reversals().getFirst();
        assertThat(kept.usedBy()).isPresent();
        assertThat(kept.consent().orElseThrow().byPassword()).isFalse();
        plate = new ImplantId(ids.next());
        assertStopped(record(placed(PlateSide.LATERAL)), Stop.Reason.AGAINST_THE_READING);
    }

    @Test
    void takesTheSecondPersonsPasswordAndNoOther() {
        var reversal = ids.next();
        surgeon.does(() -> reversals.ask(child, reversal, FEMUR, PlateSide.MEDIAL, "it rebounded beyond"));
        var colleague = reader.colleague(surgeon).staff();
        var stranger = network.staff(network.site(), "SURGEON");
        assertThat(beside(reversal, colleague, "not their password")).isEqualTo(ReversalService.Consent.WRONG);
        assertThat(beside(reversal, stranger, network.password(stranger)))
                .isEqualTo(ReversalService.Consent.NOT_TREATING);
        assertThat(beside(reversal, surgeon.staff(), network.password(surgeon.staff())))
                .isEqualTo(ReversalService.Consent.SAME_PERSON);
        assertThat(of().reversals().getFirst().consent()).isEmpty();
        assertThat(beside(reversal, colleague, network.password(colleague))).isEqualTo(ReversalService.Consent.GIVEN);
        assertThat(of().reversals().getFirst().consent().orElseThrow().byPassword())
                .isTrue();
    }

    @Test
    void closesNoPhysisWithAnImplantOfWhichNothingIsSaid() {
        record(placed(PlateSide.LATERAL));
        var day = DAY.plusDays(200);
        assertStopped(closed(day, null, null), Stop.Reason.IMPLANT_UNSETTLED);
        assertThat(closed(day, day, null).isRecorded()).isTrue();
        assertThat(of().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.MATURE);
    }

    @Test
    void letsNoLimbGoAsStraightWithAnImplantThatCanTurnIt() {
        record(placed(PlateSide.LATERAL));
        var straight =
                new CareStep(DAY.plusDays(9), Side.RIGHT, CareStep.Step.ENDED, CareStep.EndReason.STRAIGHT, null);
        assertStopped(keep(straight), Stop.Reason.STRAIGHT_WITH_IMPLANT);
        var declined =
                new CareStep(DAY.plusDays(9), Side.RIGHT, CareStep.Step.ENDED, CareStep.EndReason.DECLINED, null);
        assertThat(keep(declined).isRecorded()).isTrue();
        assertThat(of().limb(Side.RIGHT).isInCare()).isFalse();
    }

    @Test
    void takesDownWhatWasDoneElsewhereAsItIs() {
        reader.signed(surgeon, reader.film(surgeon, child, DAY.minusDays(20)));
        target(new Angle(110));
        var data = placed(PlateSide.LATERAL);
        var elsewhere = new ProcedureData(DAY, true, null, null, data.acts(), data.next());
        assertThat(record(elsewhere).isRecorded()).isTrue();
        assertThat(of().tethersIn().getFirst().elsewhere()).isTrue();
    }

    @Test
    void recordsNothingBeforeBirthOrAfterToday() {
        var early = TestTreatment.plate(BORN.minusDays(1), FEMUR, PlateSide.LATERAL, plate);
        var late = TestTreatment.plate(LocalDate.of(2999, 1, 1), FEMUR, PlateSide.LATERAL, plate);
        assertStopped(record(early), Stop.Reason.DAY_IMPOSSIBLE);
        assertStopped(record(late), Stop.Reason.DAY_IMPOSSIBLE);
    }

    @Test
    void keepsFindingsComplicationsAndChecks() {
        record(placed(PlateSide.LATERAL));
        var bent = new ImplantFinding(
                DAY.plusDays(90),
                plate,
                ImplantFinding.Part.METAPHYSEAL_SCREW,
                ImplantFinding.Seen.BENT,
                null,
                "on the film");
        var stiff = new Complication(
                DAY.plusDays(40), Complication.Kind.STIFFNESS, Complication.Grade.II, null, Side.RIGHT, "knee 0-90");
        var check = new TheatreCheck(DAY, TheatreCheck.Phase.BEFORE, java.util.Map.of(Question.SIDE_MARKED, "YES"));
        List.of(bent, stiff, check)
                .forEach(fact -> assertThat(keep(fact).isRecorded()).isTrue());
        assertThat(of().findings().facts()).containsExactly(bent);
        assertThat(of().complications().facts()).containsExactly(stiff);
        assertThat(of().checks().facts()).containsExactly(check);
        assertThat(of().tethersIn().getFirst().isInDoubt()).isTrue();
        assertStopped(
                keep(new ImplantFinding(
                        DAY,
                        new ImplantId(ids.next()),
                        ImplantFinding.Part.BODY,
                        ImplantFinding.Seen.SOUND,
                        null,
                        null)),
                Stop.Reason.NOT_IN);
    }

    @Test
    void movesWithTheChildToAnotherHospital() {
        record(placed(PlateSide.LATERAL));
        var there = new SiteId(network.site());
        network.owner()
                .sql("update child set site_id = ? where id = ?")
                .params(there.value(), child.value())
                .update();
        var other = new Sender(network.staff(there.value(), "SURGEON"), there);
        assertThat(other.does(() -> treatments.of(child)).tethersIn()).hasSize(1);
        assertThatThrownBy(this::of).isInstanceOf(IllegalArgumentException.class);
    }

    private ReversalService.Consent beside(UUID reversal, UUID who, String password) {
        return org.espalier.platform.Callers.callAs(
                new org.espalier.platform.Caller.Staff(surgeon.staff()),
                () -> reversals.consentBeside(child, reversal, network.login(who), password));
    }

    private ProcedureData placed(PlateSide side) {
        return TestTreatment.plate(DAY, FEMUR, side, plate);
    }

    private FactId plan(ProcedureKind kind, PhysisKey physis, PlateSide side) {
        var id = new FactId(ids.next());
        var plan = Plan.decided(DAY, kind, physis, side, Deformity.VARUS);
        assertThat(surgeon.does(() -> facts.record(child, id, plan)).isRecorded())
                .isTrue();
        return id;
    }

    private RecordOutcome decide(PlateSide side, Deformity deformity) {
        return keep(Plan.decided(DAY, ProcedureKind.PLATE_PLACED, FEMUR, side, deformity));
    }

    private void target(Angle angle) {
        assertThat(keep(Target.of(DAY.minusDays(9), FEMUR, angle, "to tell a direction"))
                        .isRecorded())
                .isTrue();
    }

    private RecordOutcome closed(
            LocalDate day,
            @org.jspecify.annotations.Nullable LocalDate told,
            @org.jspecify.annotations.Nullable LocalDate by) {
        return keep(new Maturity(day, FEMUR.side(), FEMUR.bone(), FEMUR.end(), "A. Reader", told, by));
    }

    private RecordOutcome keep(TreatmentFact fact) {
        return surgeon.does(() -> facts.record(child, new FactId(ids.next()), fact));
    }

    private RecordOutcome record(ProcedureData data) {
        return record(new ProcedureId(ids.next()), data);
    }

    private RecordOutcome record(ProcedureId id, ProcedureData data) {
        return surgeon.does(() -> treatments.record(child, id, data));
    }

    private RecordOutcome correct(ProcedureId earlier, ProcedureData data) {
        return surgeon.does(
                () -> treatments.correct(child, earlier, new ProcedureId(ids.next()), data, "it was the tibia"));
    }

    private RecordOutcome withdraw(ProcedureId earlier) {
        return surgeon.does(() -> treatments.withdraw(child, earlier, new ProcedureId(ids.next()), "another child’s"));
    }

    private Treatment of() {
        return surgeon.does(() -> treatments.of(child));
    }

    private static void assertStopped(RecordOutcome outcome, Stop.Reason reason) {
        assertThat(outcome).isInstanceOfSatisfying(RecordOutcome.Stopped.class, stopped -> assertThat(stopped.stops())
                .extracting(Stop::reason)
                .contains(reason));
    }
}
