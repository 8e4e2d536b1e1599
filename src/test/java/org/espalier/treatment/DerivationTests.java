package org.espalier.treatment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.treatment.TestTreatment.FEMUR;
import static org.espalier.treatment.TestTreatment.TIBIA;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.FactId;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every sentence of the rules about where a physis stands. */
class DerivationTests {

    private static final LocalDate START = LocalDate.of(2024, 1, 10);
    private static final LocalDate TODAY = LocalDate.of(2026, 1, 10);

    private final ImplantId plate = TestTreatment.implant();
    private final List<Procedure> procedures = new ArrayList<>();
    private final List<Written<Plan>> plans = new ArrayList<>();
    private final List<Written<Target>> targets = new ArrayList<>();
    private static final SiteId HERE = new SiteId(new UUID(0, 1));

    private final List<Written<ImplantFinding>> findings = new ArrayList<>();
    private final List<Written<Maturity>> maturities = new ArrayList<>();
    private final List<Written<CareStep>> careSteps = new ArrayList<>();

    @Test
    void isWatchedUntilSomethingIsDoneOrDecided() {
        assertStands(PhysisState.WATCHED, null, Why.Reason.FOLLOWED);
    }

    @Test
    void isPlannedOnceAnOperationIsDecidedOn() {
        plan(0, ProcedureKind.PLATE_PLACED);
        assertStands(PhysisState.PLANNED, 0, Why.Reason.PLANNED);
    }

    @Test
    void isListedBesideItsState() {
        var asked = day(3);
        var plan = Plan.decided(day(0), ProcedureKind.PLATE_PLACED, FEMUR, PlateSide.MEDIAL, Deformity.VALGUS)
                .listed(asked, asked.plusDays(30), new Angle(-2));
        plans.add(written(plan));
        assertStands(PhysisState.PLANNED, 0, Why.Reason.LISTED);
        assertThat(femur().isListed()).isTrue();
    }

    @Test
    void isPlannedNoMoreWhenThePlanIsWithdrawn() {
        var plan = plan(0, ProcedureKind.PLATE_PLACED);
        plans.add(new Written<>(fact(), null, null, at(9), plan, "the family declined"));
        assertStands(PhysisState.WATCHED, null, Why.Reason.FOLLOWED);
    }

    @Test
    void isTetheredWhilePlateAndBothScrewsHold() {
        act(10, ProcedureKind.PLATE_PLACED);
        assertStands(PhysisState.TETHERED, 10, Why.Reason.PLATE_HOLDS);
        assertThat(femur().why().side()).contains(PlateSide.MEDIAL);
    }

    @Test
    void passesFromWatchedByPlannedToTetheredWithTheDayOfEach() {
        var plan = plan(2, ProcedureKind.PLATE_PLACED);
        var placed = placing(FEMUR, PlateSide.MEDIAL, plate).restingOn(plan, null);
        add(10, placed);
        assertThat(femur().spans())
                .extracting(StateSpan::state)
                .containsExactly(PhysisState.WATCHED, PhysisState.PLANNED, PhysisState.TETHERED);
        assertThat(femur().spans())
                .extracting(StateSpan::from)
                .containsExactly(Optional.empty(), Optional.of(day(2)), Optional.of(day(10)));
        assertThat(femur().plans()).isEmpty();
    }

    @Test
    void isParkedWithTheMetaphysealScrewOutAndThePlateLeft() {
        act(10, ProcedureKind.PLATE_PLACED);
        act(200, ProcedureKind.METAPHYSEAL_SCREW_OUT);
        assertStands(PhysisState.PARKED, 200, Why.Reason.METAPHYSEAL_SCREW_OUT);
        assertThat(femur().tethersIn()).hasSize(1);
    }

    @Test
    void isParkedWithTheEpiphysealScrewOutToo() {
        act(10, ProcedureKind.PLATE_PLACED);
        act(200, ProcedureKind.EPIPHYSEAL_SCREW_OUT);
        assertStands(PhysisState.PARKED, 200, Why.Reason.EPIPHYSEAL_SCREW_OUT);
        act(210, ProcedureKind.METAPHYSEAL_SCREW_OUT);
        assertStands(PhysisState.PARKED, 200, Why.Reason.BOTH_SCREWS_OUT);
    }

    @Test
    void isParkedAndNotTrustedWhenAScrewWasSeenBroken() {
        act(10, ProcedureKind.PLATE_PLACED);
        seen(100, ImplantFinding.Part.METAPHYSEAL_SCREW, ImplantFinding.Seen.BROKEN);
        assertStands(PhysisState.PARKED, 100, Why.Reason.BROKEN);
        assertThat(femur().tethersIn().getFirst().isInDoubt()).isTrue();
    }

    @Test
    void staysTetheredWithABentScrewThatIsInDoubt() {
        act(10, ProcedureKind.PLATE_PLACED);
        seen(100, ImplantFinding.Part.EPIPHYSEAL_SCREW, ImplantFinding.Seen.BENT);
        assertStands(PhysisState.TETHERED, 10, Why.Reason.PLATE_HOLDS);
        assertThat(femur().tethersIn().getFirst().isInDoubt()).isTrue();
    }

    @Test
    void holdsAgainWithTheBrokenScrewExchanged() {
        act(10, ProcedureKind.PLATE_PLACED);
        seen(100, ImplantFinding.Part.METAPHYSEAL_SCREW, ImplantFinding.Seen.BROKEN);
        act(120, ProcedureKind.METAPHYSEAL_SCREW_EXCHANGED);
        assertStands(PhysisState.TETHERED, 120, Why.Reason.PLATE_HOLDS);
    }

    @Test
    void isReleasedWhenNothingHolds() {
        act(10, ProcedureKind.PLATE_PLACED);
        act(300, ProcedureKind.PLATE_OUT);
        assertStands(PhysisState.RELEASED, 300, Why.Reason.NOTHING_HOLDS);
        assertThat(femur().tethersIn()).isEmpty();
        assertThat(femur().tethers().getFirst().to()).contains(day(300));
    }

    @Test
    void alternatesTetheredParkedAndReleasedAsOftenAsNeeded() {
        act(10, ProcedureKind.PLATE_PLACED);
        act(100, ProcedureKind.METAPHYSEAL_SCREW_OUT);
        act(200, ProcedureKind.METAPHYSEAL_SCREW_IN);
        act(300, ProcedureKind.PLATE_OUT);
        add(400, placing(FEMUR, PlateSide.MEDIAL, TestTreatment.implant()));
        assertThat(femur().spans())
                .extracting(StateSpan::state)
                .containsExactly(
                        PhysisState.WATCHED,
                        PhysisState.TETHERED,
                        PhysisState.PARKED,
                        PhysisState.TETHERED,
                        PhysisState.RELEASED,
                        PhysisState.TETHERED);
        assertThat(derived().misfits()).isEmpty();
        assertThat(femur().tethers()).hasSize(2);
        assertThat(femur().tethers().getFirst().periods())
                .extracting(TetherPeriod::hold)
                .containsExactly(Hold.HOLDS, Hold.METAPHYSEAL_SCREW_OUT, Hold.HOLDS);
    }

    @Test
    void isReleasedOnlyWhenTheSecondPlateIsOutToo() {
        var second = TestTreatment.implant();
        act(10, ProcedureKind.PLATE_PLACED);
        add(10, placing(FEMUR, PlateSide.ANTERIOR, second));
        act(300, ProcedureKind.PLATE_OUT);
        assertStands(PhysisState.TETHERED, 10, Why.Reason.PLATE_HOLDS);
        add(400, Act.of(ProcedureKind.PLATE_OUT, FEMUR, PlateSide.ANTERIOR, second, "plate, 2 screws", 3));
        assertStands(PhysisState.RELEASED, 400, Why.Reason.NOTHING_HOLDS);
    }

    @Test
    void isTetheredOnTheSideToWhichThePlateWasMoved() {
        act(10, ProcedureKind.PLATE_PLACED);
        add(90, Act.of(ProcedureKind.PLATE_MOVED, FEMUR, PlateSide.LATERAL, plate, "same plate", 1));
        assertStands(PhysisState.TETHERED, 10, Why.Reason.PLATE_HOLDS);
        assertThat(femur().why().side()).contains(PlateSide.LATERAL);
        assertThat(femur().tethers().getFirst().periods()).hasSize(2);
    }

    @Test
    void isTetheredByStapleTransphysealScrewOrPermanentArrest() {
        add(10, Act.of(ProcedureKind.STAPLE_PLACED, FEMUR, PlateSide.MEDIAL, plate, "staple", 1));
        assertStands(PhysisState.TETHERED, 10, Why.Reason.STAPLE_HOLDS);
        add(20, Act.of(ProcedureKind.STAPLE_OUT, FEMUR, PlateSide.MEDIAL, plate, "staple", 1));
        assertStands(PhysisState.RELEASED, 20, Why.Reason.NOTHING_HOLDS);
        add(
                30,
                Act.of(
                        ProcedureKind.TRANSPHYSEAL_SCREW_PLACED,
                        FEMUR,
                        PlateSide.MEDIAL,
                        TestTreatment.implant(),
                        "screw",
                        1));
        assertStands(PhysisState.TETHERED, 30, Why.Reason.TRANSPHYSEAL_SCREW_HOLDS);
        add(40, Act.of(ProcedureKind.PERMANENT_EPIPHYSIODESIS, TIBIA, null, null, "none", 0));
        assertThat(derived().physis(TIBIA, TODAY).why().reason()).isEqualTo(Why.Reason.ARRESTED);
        assertThat(derived().physis(TIBIA, TODAY).state()).isEqualTo(PhysisState.TETHERED);
    }

    @Test
    void isBracedFromBraceOnToBraceOff() {
        add(5, Act.ofLimb(ProcedureKind.BRACE_ON, Side.RIGHT, "brace", 1));
        assertStands(PhysisState.BRACED, 5, Why.Reason.BRACE_ON);
        add(90, Act.ofLimb(ProcedureKind.BRACE_OFF, Side.RIGHT, "brace", 1));
        assertThat(femur().state()).isEqualTo(PhysisState.WATCHED);
    }

    @Test
    void isMatureOnlyOnceSeenClosedByANamedReaderOnADatedFilm() {
        act(10, ProcedureKind.PLATE_PLACED);
        act(300, ProcedureKind.PLATE_OUT);
        closed(500, null, null);
        assertStands(PhysisState.MATURE, 500, Why.Reason.SEEN_CLOSED);
        assertThat(femur().why().reader()).contains("A. Reader");
        assertThat(derived().misfits()).isEmpty();
    }

    @Test
    void isNotMatureWhileAnImplantIsInOfWhichNothingIsSaid() {
        act(10, ProcedureKind.PLATE_PLACED);
        closed(500, null, null);
        assertThat(derived().misfits()).containsExactly(new Misfit(Misfit.Kind.IMPLANT_UNSETTLED, day(500)));
    }

    @Test
    void isMatureWithAnImplantThatStaysAndTheFamilyTold() {
        act(10, ProcedureKind.PLATE_PLACED);
        closed(500, day(510), null);
        assertThat(derived().misfits()).isEmpty();
        assertStands(PhysisState.MATURE, 500, Why.Reason.SEEN_CLOSED_IMPLANT_STAYS);
    }

    @Test
    void isMatureWithAnImplantThatComesOutByADay() {
        act(10, ProcedureKind.PLATE_PLACED);
        closed(500, null, day(700));
        assertThat(derived().misfits()).isEmpty();
        assertStands(PhysisState.MATURE, 500, Why.Reason.SEEN_CLOSED_IMPLANT_COMES_OUT);
        act(600, ProcedureKind.PLATE_OUT);
        assertThat(femur().state()).isEqualTo(PhysisState.MATURE);
    }

    @Test
    void tethersNothingThatWasSeenClosed() {
        closed(100, null, null);
        act(110, ProcedureKind.PLATE_PLACED);
        assertThat(derived().misfits()).containsExactly(new Misfit(Misfit.Kind.MATURE_ALREADY, day(110)));
    }

    @Test
    void takesNothingOutThatIsNotIn() {
        act(10, ProcedureKind.PLATE_OUT);
        assertThat(derived().misfits()).extracting(Misfit::kind).containsExactly(Misfit.Kind.NOT_IN);
    }

    @Test
    void takesNothingOutTwice() {
        act(10, ProcedureKind.PLATE_PLACED);
        act(20, ProcedureKind.PLATE_OUT);
        act(30, ProcedureKind.PLATE_OUT);
        assertThat(derived().misfits()).extracting(Misfit::kind).containsExactly(Misfit.Kind.NOT_IN);
    }

    @Test
    void takesNothingOutOnTheOtherSideOfTheBoneOrAnotherPhysis() {
        act(10, ProcedureKind.PLATE_PLACED);
        add(20, Act.of(ProcedureKind.PLATE_OUT, FEMUR, PlateSide.LATERAL, plate, "plate", 1));
        add(30, Act.of(ProcedureKind.PLATE_OUT, TIBIA, PlateSide.MEDIAL, plate, "plate", 1));
        add(40, Act.of(ProcedureKind.STAPLE_OUT, FEMUR, PlateSide.MEDIAL, plate, "plate", 1));
        assertThat(derived().misfits())
                .extracting(Misfit::kind)
                .containsExactly(Misfit.Kind.ANOTHER_PLACE, Misfit.Kind.ANOTHER_PLACE, Misfit.Kind.ANOTHER_IMPLANT);
    }

    @Test
    void countsEachScrewOutAndInOnce() {
        act(10, ProcedureKind.PLATE_PLACED);
        act(20, ProcedureKind.METAPHYSEAL_SCREW_IN);
        act(30, ProcedureKind.METAPHYSEAL_SCREW_OUT);
        act(40, ProcedureKind.METAPHYSEAL_SCREW_OUT);
        assertThat(derived().misfits())
                .extracting(Misfit::kind)
                .containsExactly(Misfit.Kind.SCREW_IN_ALREADY, Misfit.Kind.SCREW_OUT_ALREADY);
    }

    @Test
    void letsTheCorrectedProcedureStandInPlaceOfTheEarlier() {
        act(10, ProcedureKind.PLATE_PLACED);
        var wrong = procedures.getFirst();
        var right = TestTreatment.plate(day(10), TIBIA, PlateSide.MEDIAL, plate);
        procedures.add(new Procedure(
                new ProcedureId(UUID.randomUUID()),
                HERE,
                day(10),
                Optional.of(right),
                null,
                at(20),
                Optional.of(wrong.id()),
                "it was the tibia"));
        assertThat(femur().state()).isEqualTo(PhysisState.WATCHED);
        assertThat(derived().physis(TIBIA, TODAY).state()).isEqualTo(PhysisState.TETHERED);
        assertThat(derived().misfits()).isEmpty();
    }

    @Test
    void keepsTheRetainedFragmentAndTheDayTheFamilyWasTold() {
        act(10, ProcedureKind.PLATE_PLACED);
        act(300, ProcedureKind.PLATE_OUT);
        findings.add(written(new ImplantFinding(
                day(300),
                plate,
                ImplantFinding.Part.METAPHYSEAL_SCREW,
                ImplantFinding.Seen.FRAGMENT_RETAINED,
                day(301),
                "tip left")));
        assertThat(derived().misfits()).isEmpty();
        assertThat(femur().tethers().getFirst().retainedFragment().orElseThrow().toldOn())
                .isEqualTo(day(301));
    }

    @Test
    void givesTheLimbTheMostUrgentStateOfItsPhyses() {
        act(10, ProcedureKind.PLATE_PLACED);
        act(20, ProcedureKind.PLATE_OUT);
        var physes = List.of(femur(), derived().physis(TIBIA, TODAY));
        assertThat(derived().limb(Side.RIGHT, physes, TODAY).state()).isEqualTo(PhysisState.RELEASED);
        assertThat(derived().limb(Side.LEFT, physes, TODAY).state()).isEqualTo(PhysisState.WATCHED);
    }

    @Test
    void saysOfALimbThatItIsInCastOrFrameAndSinceWhen() {
        add(10, Act.ofLimb(ProcedureKind.CAST_ON, Side.RIGHT, "cast", 1));
        add(12, Act.ofLimb(ProcedureKind.FRAME_ON, Side.LEFT, "ring frame", 1));
        add(30, Act.ofLimb(ProcedureKind.CAST_WEDGED, Side.RIGHT, "none", 0));
        assertThat(limb(Side.RIGHT).conditions()).containsOnly(java.util.Map.entry(LimbCondition.IN_CAST, day(10)));
        assertThat(limb(Side.LEFT).conditions()).containsOnly(java.util.Map.entry(LimbCondition.IN_FRAME, day(12)));
        add(50, Act.ofLimb(ProcedureKind.CAST_OFF, Side.RIGHT, "none", 0));
        assertThat(limb(Side.RIGHT).conditions()).isEmpty();
    }

    @Test
    void endsForAReasonAndIsTakenUpAgain() {
        careSteps.add(written(new CareStep(day(10), null, CareStep.Step.ENDED, CareStep.EndReason.LEFT_NETWORK, null)));
        assertThat(limb(Side.LEFT).ended()).contains(CareStep.EndReason.LEFT_NETWORK);
        assertThat(limb(Side.LEFT).isInCare()).isFalse();
        careSteps.add(written(new CareStep(day(90), Side.LEFT, CareStep.Step.TAKEN_UP, null, null)));
        assertThat(limb(Side.LEFT).isInCare()).isTrue();
        assertThat(limb(Side.RIGHT).isInCare()).isFalse();
    }

    @Test
    void guidesToEightySevenDegreesUntilAnotherTargetIsSigned() {
        assertThat(femur().targetAngle()).isEqualTo(new Angle(87));
        assertThat(femur().target()).isEmpty();
        targets.add(written(Target.of(day(5), FEMUR, new Angle(84), "rebound is expected")));
        assertThat(femur().targetAngle()).isEqualTo(new Angle(84));
        targets.add(written(Target.ofLimb(day(6), Side.RIGHT, new Angle(-2), "a little past straight")));
        assertThat(limb(Side.RIGHT).target().orElseThrow().angle()).isEqualTo(new Angle(-2));
    }

    @Test
    void takesAnOsteotomyPlannedForALimbAsAPlanForTheKnee() {
        plans.add(written(new Plan(
                day(3),
                ProcedureKind.OSTEOTOMY,
                Side.RIGHT,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null)));
        assertStands(PhysisState.PLANNED, 3, Why.Reason.PLANNED);
    }

    @Test
    void leavesATetheredPhysisTetheredWhileItsRemovalIsListed() {
        act(10, ProcedureKind.PLATE_PLACED);
        plan(200, ProcedureKind.PLATE_OUT);
        assertStands(PhysisState.TETHERED, 10, Why.Reason.PLATE_HOLDS);
        assertThat(femur().plans()).hasSize(1);
    }

    private void assertStands(PhysisState state, @Nullable Integer sinceDay, Why.Reason why) {
        assertThat(femur().state()).isEqualTo(state);
        assertThat(femur().since()).isEqualTo(Optional.ofNullable(sinceDay).map(DerivationTests::day));
        assertThat(femur().why().reason()).isEqualTo(why);
    }

    private PhysisStanding femur() {
        return derived().physis(FEMUR, TODAY);
    }

    private LimbStanding limb(Side side) {
        return derived().limb(side, List.of(femur()), TODAY);
    }

    private Derivation derived() {
        return new Derivation(new TreatmentRecord(
                procedures,
                new FactLog<>(plans),
                new FactLog<>(targets),
                new FactLog<>(findings),
                new FactLog<>(maturities),
                new FactLog<>(careSteps),
                new FactLog<>(List.of()),
                new FactLog<>(List.of())));
    }

    private void act(int day, ProcedureKind kind) {
        add(day, Act.of(kind, FEMUR, PlateSide.MEDIAL, plate, "plate and screws", 3));
    }

    private static Act placing(PhysisKey physis, PlateSide side, ImplantId implant) {
        return Act.of(ProcedureKind.PLATE_PLACED, physis, side, implant, "plate, 2 screws", 3);
    }

    private void add(int day, Act act) {
        procedures.add(new Procedure(
                new ProcedureId(UUID.randomUUID()),
                HERE,
                day(day),
                Optional.of(TestTreatment.of(day(day), act)),
                null,
                at(day),
                Optional.empty(),
                null));
    }

    private FactId plan(int day, ProcedureKind kind) {
        var plan = written(Plan.decided(day(day), kind, FEMUR, PlateSide.MEDIAL, Deformity.VALGUS));
        plans.add(plan);
        return plan.id();
    }

    private void seen(int day, ImplantFinding.Part part, ImplantFinding.Seen seen) {
        findings.add(written(new ImplantFinding(day(day), plate, part, seen, null, null)));
    }

    private void closed(int day, @Nullable LocalDate told, @Nullable LocalDate removeBy) {
        maturities.add(
                written(new Maturity(day(day), FEMUR.side(), FEMUR.bone(), FEMUR.end(), "A. Reader", told, removeBy)));
    }

    private static <F extends TreatmentFact> Written<F> written(F fact) {
        return new Written<>(fact(), fact, null, at(0), null, null);
    }

    private static FactId fact() {
        return new FactId(UUID.randomUUID());
    }

    private static LocalDate day(int number) {
        return START.plusDays(number);
    }

    private static Instant at(int day) {
        return day(day).atStartOfDay().toInstant(java.time.ZoneOffset.UTC);
    }
}
