package org.espalier.treatment;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.springframework.stereotype.Component;

/** Treatment for a test: a child with a plate in, a plan, a target and a reversal asked for. */
@Component
public class TestTreatment {

    public static final PhysisKey FEMUR = new PhysisKey(Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL);
    public static final PhysisKey TIBIA = new PhysisKey(Side.RIGHT, Bone.TIBIA, BoneEnd.PROXIMAL);

    private static final LocalDate PLACED = LocalDate.of(2025, 6, 10);
    private static final LocalDate THEATRE = LocalDate.of(2025, 7, 1);

    private final TreatmentService treatments;
    private final TreatmentFactService facts;
    private final ReversalService reversals;
    private final Ids ids;

    TestTreatment(TreatmentService treatments, TreatmentFactService facts, ReversalService reversals, Ids ids) {
        this.treatments = treatments;
        this.facts = facts;
        this.reversals = reversals;
        this.ids = ids;
    }

    /** What was recorded of one plate on one day. */
    public static ProcedureData plate(LocalDate on, PhysisKey physis, PlateSide side, ImplantId implant) {
        return of(on, Act.of(ProcedureKind.PLATE_PLACED, physis, side, implant, "plate, 2 screws", 3));
    }

    public static ProcedureData of(LocalDate on, Act... acts) {
        return new ProcedureData(on, false, null, null, List.of(acts), new NextLook(on.plusDays(84), "film"));
    }

    /** Treats the child, and says with what arguments each method can be asked about it. */
    public Map<String, Object[]> arrange(ChildId child) {
        var procedure = new ProcedureId(ids.next());
        var data = plate(PLACED, TIBIA, PlateSide.LATERAL, new ImplantId(ids.next()));
        demand(treatments.record(child, procedure, elsewhere(data)));
        var planned = new FactId(ids.next());
        var plan = Plan.decided(PLACED, ProcedureKind.PLATE_OUT, TIBIA, PlateSide.LATERAL, null)
                .listed(PLACED, THEATRE, null);
        demand(facts.record(child, planned, plan));
        var target = Target.of(PLACED, FEMUR, new Angle(110), "to tell the direction");
        demand(facts.record(child, new FactId(ids.next()), target));
        var reversal = ids.next();
        reversals.ask(child, reversal, FEMUR, PlateSide.LATERAL, "it rebounds");
        var again = of(PLACED.plusDays(1), Act.ofLimb(ProcedureKind.CAST_ON, Side.RIGHT, "none", 0));
        return Map.ofEntries(
                Map.entry("TreatmentService.deformity", new Object[] {child, FEMUR, PLACED}),
                Map.entry("TreatmentService.record", new Object[] {child, new ProcedureId(ids.next()), again}),
                Map.entry(
                        "TreatmentService.correct",
                        new Object[] {child, procedure, new ProcedureId(ids.next()), elsewhere(data), "typed wrongly"}),
                Map.entry(
                        "TreatmentService.withdraw",
                        new Object[] {child, procedure, new ProcedureId(ids.next()), "not theirs"}),
                Map.entry("TreatmentFactService.record", new Object[] {child, new FactId(ids.next()), target}),
                Map.entry(
                        "TreatmentFactService.replace",
                        new Object[] {child, planned, new FactId(ids.next()), plan, "typed wrongly"}),
                Map.entry(
                        "TreatmentFactService.withdraw",
                        new Object[] {child, planned, plan, new FactId(ids.next()), "not theirs"}),
                Map.entry("ReversalService.ask", new Object[] {child, ids.next(), TIBIA, PlateSide.MEDIAL, "it rebounds"
                }),
                Map.entry("ReversalService.consent", new Object[] {child, reversal}),
                Map.entry("ReversalService.consentBeside", new Object[] {child, reversal, "nobody", "no password"}),
                Map.entry("TheatreService.list", new Object[] {site(child), THEATRE}));
    }

    private Object site(ChildId child) {
        return treatments.of(child).site();
    }

    private static ProcedureData elsewhere(ProcedureData data) {
        return new ProcedureData(data.on(), true, null, null, data.acts(), data.next());
    }

    private static void demand(RecordOutcome outcome) {
        if (outcome instanceof RecordOutcome.Stopped(var stops)) {
            throw new AssertionError("stopped: " + stops);
        }
    }

    /** A name for what is put in. */
    public static ImplantId implant() {
        return new ImplantId(UUID.randomUUID());
    }
}
