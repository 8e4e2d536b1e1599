package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.List;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Component;

/** A girl of eight with both tibiae in varus, 72 degrees at first, plates on the lateral side, films on the way. */
@Component
public class TestCourse {

    public static final PhysisKey RIGHT_TIBIA = new PhysisKey(Side.RIGHT, Bone.TIBIA, BoneEnd.PROXIMAL);
    public static final PhysisKey LEFT_TIBIA = new PhysisKey(Side.LEFT, Bone.TIBIA, BoneEnd.PROXIMAL);
    public static final PhysisKey RIGHT_FEMUR = new PhysisKey(Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL);
    public static final LocalDate BIRTH = LocalDate.of(2017, 9, 1);
    public static final LocalDate BEFORE = LocalDate.of(2025, 10, 1);
    public static final LocalDate PLATE = LocalDate.of(2025, 11, 3);

    private final TestReader reader;
    private final TreatmentService treatments;
    private final Ids ids;

    TestCourse(TestReader reader, TreatmentService treatments, Ids ids) {
        this.reader = reader;
        this.treatments = treatments;
        this.ids = ids;
    }

    /** A child read once and with a plate on either tibia. */
    public ChildId plated(Sender surgeon) {
        var child = reader.child(surgeon, BIRTH);
        reader.signed(surgeon, reader.film(surgeon, child, BEFORE));
        plate(surgeon, child, PLATE, RIGHT_TIBIA);
        plate(surgeon, child, PLATE, LEFT_TIBIA);
        return child;
    }

    /** A child with plates and films of half a year, moving nearly a degree a month. */
    public ChildId underWay(Sender surgeon) {
        var child = plated(surgeon);
        film(surgeon, child, LocalDate.of(2026, 2, 2), 2.5);
        film(surgeon, child, LocalDate.of(2026, 5, 4), 5.2);
        film(surgeon, child, LocalDate.of(2026, 8, 3), 8.1);
        return child;
    }

    /** A girl not yet two whose bows stay where those of other children straighten. */
    public ChildId youngBow(Sender surgeon) {
        var child = reader.child(surgeon, LocalDate.of(2024, 11, 1));
        for (var on : List.of(LocalDate.of(2026, 2, 2), LocalDate.of(2026, 8, 3))) {
            reader.signedWithShafts(surgeon, reader.film(surgeon, child, on), 12);
        }
        return child;
    }

    public void film(Sender surgeon, ChildId child, LocalDate on, double straightened) {
        reader.signed(surgeon, reader.film(surgeon, child, on), straightened);
    }

    public void plate(Sender surgeon, ChildId child, LocalDate on, PhysisKey physis) {
        var act = Act.of(
                ProcedureKind.PLATE_PLACED, physis, PlateSide.LATERAL, new ImplantId(ids.next()), "plate, 2 screws", 3);
        record(
                surgeon,
                child,
                new ProcedureData(on, true, null, null, List.of(act), new NextLook(on.plusDays(84), "film")));
    }

    public void metaphysealScrewOut(Sender surgeon, ChildId child, LocalDate on, PhysisKey physis) {
        takeOut(surgeon, child, on, physis, ProcedureKind.METAPHYSEAL_SCREW_OUT);
    }

    public void plateOut(Sender surgeon, ChildId child, LocalDate on, PhysisKey physis) {
        takeOut(surgeon, child, on, physis, ProcedureKind.PLATE_OUT);
    }

    private void takeOut(Sender surgeon, ChildId child, LocalDate on, PhysisKey physis, ProcedureKind kind) {
        var implant = surgeon.does(() -> treatments.of(child))
                .physis(physis)
                .orElseThrow()
                .tethersIn()
                .getFirst();
        var act = Act.of(kind, physis, PlateSide.LATERAL, implant.implant().orElseThrow(), "out", 1);
        record(
                surgeon,
                child,
                new ProcedureData(on, true, null, null, List.of(act), new NextLook(on.plusDays(84), "look")));
    }

    void record(Sender surgeon, ChildId child, ProcedureData data) {
        var outcome = surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), data));
        if (outcome instanceof RecordOutcome.Stopped stopped) {
            throw new AssertionError("stopped: " + stopped.stops());
        }
    }
}
