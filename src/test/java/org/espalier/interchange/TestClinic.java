package org.espalier.interchange;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.film.TestDoor;
import org.espalier.followup.Appointment;
import org.espalier.followup.CareEnd;
import org.espalier.followup.EndReason;
import org.espalier.followup.Family;
import org.espalier.followup.FamilyService;
import org.espalier.followup.Happening;
import org.espalier.followup.Phone;
import org.espalier.followup.Visit;
import org.espalier.followup.VisitReason;
import org.espalier.followup.VisitService;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.BodySize;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneAge;
import org.espalier.patient.BoneAgeMethod;
import org.espalier.patient.BoneDisease;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.ChildOrder;
import org.espalier.patient.ClinicalExamination;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.DiagnosisKind;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.patient.Finding;
import org.espalier.patient.ImagingReport;
import org.espalier.patient.LabAnalyte;
import org.espalier.patient.LabResult;
import org.espalier.patient.LabUnit;
import org.espalier.patient.LegAngle;
import org.espalier.patient.LegAnswer;
import org.espalier.patient.LegExamination;
import org.espalier.patient.LegSign;
import org.espalier.patient.Onset;
import org.espalier.patient.PatientService;
import org.espalier.patient.SleepSymptoms;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.espalier.science.quantity.Weight;
import org.espalier.stock.Explant;
import org.espalier.stock.Lot;
import org.espalier.stock.TestStock;
import org.espalier.treatment.Act;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.Complication;
import org.espalier.treatment.Deformity;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.Maturity;
import org.espalier.treatment.MeasuredMinutes;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.Piece;
import org.espalier.treatment.Plan;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.Question;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.Target;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFact;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Component;

/**
 * A hospital whose records hold something of every kind, each written down by those who would. All of it is invented.
 */
@Component
class TestClinic {

    static final PhysisKey FEMUR = new PhysisKey(Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL);
    static final PhysisKey TIBIA = new PhysisKey(Side.LEFT, Bone.TIBIA, BoneEnd.PROXIMAL);

    /** A hospital with one who does everything there. */
    record Hospital(SiteId site, UUID staff) {}

    /** What lies there, and the lot of the plates. */
    private record Shelves(TestStock.Stocked stocked, Lot plates) {}

    private final TestNetwork network;
    private final PatientService patients;
    private final ExaminationService examinations;
    private final TreatmentService treatments;
    private final TreatmentFactService facts;
    private final FamilyService families;
    private final VisitService visits;
    private final TestReader reader;
    private final TestStock stock;
    private final Ids ids;

    TestClinic(
            TestNetwork network,
            PatientService patients,
            ExaminationService examinations,
            TreatmentService treatments,
            TreatmentFactService facts,
            FamilyService families,
            VisitService visits,
            TestReader reader,
            TestStock stock,
            Ids ids) {
        this.network = network;
        this.patients = patients;
        this.examinations = examinations;
        this.treatments = treatments;
        this.facts = facts;
        this.families = families;
        this.visits = visits;
        this.reader = reader;
        this.stock = stock;
        this.ids = ids;
    }

    Hospital empty() {
        var site = network.site();
        return new Hospital(new SiteId(site), network.staff(site, "SURGEON", "NURSE", "RADIOGRAPHER", "STOREKEEPER"));
    }

    Hospital rich() {
        var hospital = empty();
        var stocked = stocked(hospital);
        var child = network.as(hospital.staff(), () -> {
            watched(hospital);
            gone(hospital);
            return treated(hospital, stocked);
        });
        read(hospital, child);
        return hospital;
    }

    private void read(Hospital hospital, ChildId child) {
        var surgeon = new TestDoor.Sender(hospital.staff(), hospital.site());
        var film = reader.film(surgeon, child, LocalDate.of(2025, 9, 2));
        var first = reader.signed(surgeon, film, 3);
        reader.signedAgain(reader.colleague(surgeon), first, 2);
        reader.film(surgeon, child, LocalDate.of(2025, 10, 2));
    }

    private Shelves stocked(Hospital hospital) {
        var stocked = stock.empty(hospital.site());
        var far = LocalDate.of(2040, 1, 31);
        var plates = stock.arrive(stocked, stocked.plate(), stocked.store(), "A-1", far, 6);
        stock.arrive(stocked, stocked.screw(), stocked.tray(), "B-1", far, 4);
        stock.arrive(stocked, stocked.screw(), stocked.tray(), "B-2", far.plusYears(1), 4);
        return new Shelves(stocked, plates);
    }

    /** What is on record of a child's limbs. */
    Treatment treatment(Hospital hospital, String number) {
        return network.as(hospital.staff(), () -> {
            var child = patients.list(hospital.site(), ChildOrder.NAME, 0).stream()
                    .filter(one -> one.data()
                            .map(ChildData::localNumber)
                            .filter(number::equals)
                            .isPresent())
                    .findFirst()
                    .orElseThrow();
            return treatments.of(child.id());
        });
    }

    ChildId child(Hospital hospital, String number, String family, LocalDate birth) {
        var id = new ChildId(ids.next());
        patients.register(hospital.site(), id, new ChildData(family, "Invented", birth, Sex.FEMALE, number));
        return id;
    }

    private ChildId treated(Hospital hospital, Shelves stocked) {
        var child = child(hospital, "A-1", "Quay, \"the younger\"", LocalDate.of(2014, 3, 2));
        examined(child);
        decided(child);
        reached(hospital, child);
        var femoral = new ImplantId(ids.next());
        var tibial = new ImplantId(ids.next());
        record(
                child,
                LocalDate.of(2024, 1, 15),
                new MeasuredMinutes(42, null),
                Act.of(ProcedureKind.PLATE_PLACED, FEMUR, PlateSide.MEDIAL, femoral, "=two-hole plate, 2 screws", 3)
                        .withPieces(pieces(stocked)),
                answered(tibial));
        record(
                child,
                LocalDate.of(2024, 11, 4),
                Act.of(ProcedureKind.METAPHYSEAL_SCREW_OUT, FEMUR, PlateSide.MEDIAL, femoral, "1 screw", 1));
        record(
                child,
                LocalDate.of(2025, 3, 4),
                Act.of(ProcedureKind.METAPHYSEAL_SCREW_IN, FEMUR, PlateSide.MEDIAL, femoral, "1 screw", 1),
                Act.of(ProcedureKind.PLATE_MOVED, TIBIA, PlateSide.MEDIAL, tibial, "the same plate", 3));
        record(
                child,
                LocalDate.of(2025, 8, 4),
                Act.of(ProcedureKind.PLATE_OUT, FEMUR, PlateSide.MEDIAL, femoral, "plate and screws", 3)
                        .withFate(Explant.Fate.DISPOSED),
                Act.ofLimb(ProcedureKind.OSTEOTOMY, Side.LEFT, "wires, cast", 2),
                Act.ofLimb(ProcedureKind.CAST_ON, Side.LEFT, "long cast", 0));
        decidedAgain(child);
        visited(child);
        return child;
    }

    /** Came, was not brought, came, was ill, and is booked. */
    private void visited(ChildId child) {
        came(child, LocalDate.of(2024, 4, 2), Optional.of(new Visit.Asked(LocalDate.of(2024, 10, 2), "film, wound")));
        var open = open(child);
        visits.record(open, new Happening.NotBrought(LocalDate.of(2024, 10, 9), VisitReason.DISTANCE, "bus, strike"));
        came(child, LocalDate.of(2025, 2, 4), Optional.empty());
        visits.record(
                open(child),
                new Happening.Cancelled(
                        LocalDate.of(2025, 6, 4), VisitReason.ILL, "measles", Optional.of(LocalDate.of(2030, 1, 7))));
        visits.record(
                open(child),
                new Happening.Booked(new Appointment(LocalDate.of(2030, 1, 4), LocalTime.of(9, 30), "B-77")));
    }

    /** A plate of a known lot from the store, a screw of mixed ones from the tray, and one that lay on no shelf. */
    private static List<Piece> pieces(Shelves shelves) {
        var stocked = shelves.stocked();
        return List.of(
                Piece.ofShelf(
                        Piece.Role.BODY,
                        stocked.plate().id(),
                        "two-hole plate | 16",
                        stocked.store(),
                        Optional.of(shelves.plates().id())),
                Piece.ofShelf(
                        Piece.Role.METAPHYSEAL_SCREW,
                        stocked.screw().id(),
                        "screw 4.5 x 24",
                        stocked.tray(),
                        Optional.empty()),
                Piece.ofOutside(Piece.Role.EPIPHYSEAL_SCREW, null, "screw lent", "L-9", null, Piece.Outside.LOAN));
    }

    private void decidedAgain(ChildId child) {
        write(
                child,
                new Plan(
                        LocalDate.of(2025, 9, 3),
                        ProcedureKind.PLATE_PLACED,
                        Side.RIGHT,
                        Bone.FEMUR,
                        BoneEnd.DISTAL,
                        PlateSide.MEDIAL,
                        Deformity.VALGUS,
                        "two-hole plate",
                        "straight by twelve",
                        "a year",
                        LocalDate.of(2025, 9, 4),
                        LocalDate.of(2030, 1, 8),
                        Angle.ofDegrees(-3.5)));
    }

    /** What was meant first and done, and what it aimed at. */
    private void decided(ChildId child) {
        var on = LocalDate.of(2024, 1, 9);
        write(child, Target.of(on, FEMUR, Angle.ofDegrees(88.5), "overshoot, as the dysplasia rebounds"));
        write(child, Target.ofLimb(on, Side.LEFT, Angle.ofDegrees(-1), "as the other"));
        write(child, Plan.decided(on, ProcedureKind.PLATE_PLACED, FEMUR, PlateSide.MEDIAL, Deformity.VALGUS));
    }

    /** What went wrong, and how the family is reached. */
    private void reached(Hospital hospital, ChildId child) {
        write(
                child,
                new Complication(
                        LocalDate.of(2024, 1, 20),
                        Complication.Kind.INFECTION,
                        Complication.Grade.II,
                        null,
                        Side.RIGHT,
                        "wound, healed"));
        write(
                child,
                new Complication(
                        LocalDate.of(2024, 3, 20),
                        Complication.Kind.STIFFNESS,
                        Complication.Grade.I,
                        null,
                        null,
                        null));
        var phones = List.of(new Phone("+1 555-0142", "mother", "es"), new Phone("555-0143", "", "en"));
        families.save(
                hospital.site(),
                child,
                new Family(0, phones, "es", true, "bus, two hours", "term ends in June", null, "C. Lead"));
    }

    private void write(ChildId child, TreatmentFact fact) {
        if (facts.record(child, new FactId(ids.next()), fact) instanceof RecordOutcome.Stopped(var stops)) {
            throw new AssertionError("stopped: " + stops);
        }
    }

    private static Act answered(ImplantId implant) {
        var plain = Act.of(ProcedureKind.PLATE_PLACED, TIBIA, PlateSide.LATERAL, implant, "four-hole plate", 5);
        return new Act(
                plain.kind(),
                plain.side(),
                plain.bone(),
                plain.end(),
                plain.plateSide(),
                plain.implant(),
                plain.implants(),
                plain.count(),
                Map.of(Question.EXTRAPERIOSTEAL, "YES", Question.PREGNANCY_ASKED, "NOT_NEEDED"),
                null,
                null);
    }

    private void examined(ChildId child) {
        var on = LocalDate.of(2024, 1, 8);
        find(child, new BodySize(on, Length.ofCentimetres(141.5), Weight.ofKilograms(38.2)));
        find(child, new BodySize(on.plusDays(90), null, Weight.ofKilograms(40)));
        find(child, new BoneAge(on, Age.ofMonths(112), BoneAgeMethod.HAND_ATLAS, "A. Reader"));
        find(child, new Diagnosis(on, DiagnosisKind.IDIOPATHIC_VALGUS, AffectedSides.BOTH, null, null, "@ both knees"));
        find(
                child,
                new Diagnosis(on, DiagnosisKind.TIBIA_VARA, AffectedSides.LEFT, Onset.EARLY, Age.ofMonths(30), null));
        var right = new LegExamination(
                Map.of(LegAngle.THIGH_FOOT, Angle.ofDegrees(-12), LegAngle.KNEE_FLEXION, Angle.ofDegrees(140)),
                Map.of(LegSign.THRUST, LegAnswer.Thrust.VARUS, LegSign.PAIN, LegAnswer.Pain.NONE));
        find(
                child,
                new ClinicalExamination(
                        on,
                        null,
                        Length.ofMillimetres(85),
                        right,
                        LegExamination.NOT_RECORDED,
                        4,
                        SleepSymptoms.SNORING,
                        "two lines\nof note"));
        find(
                child,
                new LabResult(
                        on, LabAnalyte.VITAMIN_D, new java.math.BigDecimal("41.5"), LabUnit.NMOL_PER_L, "50-125"));
        find(child, new BoneDisease(on, BoneDisease.Control.CONTROLLED, null));
        find(
                child,
                new ImagingReport(
                        on,
                        ImagingReport.Modality.MAGNETIC_RESONANCE,
                        AffectedSides.LEFT,
                        ImagingReport.Bar.BONY,
                        20,
                        Angle.ofDegrees(25),
                        null,
                        "B. Reader",
                        "a bar, medial"));
        find(child, new TibiaVaraStage(on, Side.LEFT, TibiaVaraStage.Stage.III));
    }

    private void watched(Hospital hospital) {
        var child = child(hospital, "-B2", "+Alder", LocalDate.of(2021, 5, 5));
        find(child, new BodySize(LocalDate.of(2025, 5, 5), Length.ofCentimetres(104), null));
        write(
                child,
                new CareStep(
                        LocalDate.of(2025, 5, 6),
                        Side.LEFT,
                        CareStep.Step.ENDED,
                        CareStep.EndReason.STRAIGHT,
                        "as the father's"));
    }

    private void gone(Hospital hospital) {
        var child = child(hospital, "C-3", "Reed", LocalDate.of(2009, 5, 5));
        var seen = LocalDate.of(2025, 5, 5);
        write(child, new Maturity(seen, Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL, "A. Reader", null, null));
        write(child, new Maturity(seen, Side.RIGHT, Bone.TIBIA, BoneEnd.PROXIMAL, "A. Reader", seen, null));
        var family = new Family(0, List.of(), "en", false, null, null, "by order of the court", null);
        families.save(hospital.site(), child, family);
        came(child, LocalDate.of(2025, 5, 5), Optional.empty());
        visits.record(
                open(child),
                new Happening.CareEnded(new CareEnd(
                        Optional.of(EndReason.ADULT_CARE), LocalDate.of(2025, 9, 1), "to the adult clinic")));
        var ended = LocalDate.of(2025, 9, 1);
        write(child, new CareStep(ended, null, CareStep.Step.ENDED, CareStep.EndReason.ADULT_CARE, null));
    }

    private void came(ChildId child, LocalDate on, Optional<Visit.Asked> next) {
        visits.record(open(child), new Happening.Arrived(on, next));
    }

    private Visit open(ChildId child) {
        return visits.of(child).open().orElseThrow();
    }

    private void find(ChildId child, Finding finding) {
        examinations.record(child, new FactId(ids.next()), finding);
    }

    private void record(ChildId child, LocalDate on, Act... acts) {
        record(child, on, MeasuredMinutes.NONE, acts);
    }

    private void record(ChildId child, LocalDate on, MeasuredMinutes measured, Act... acts) {
        var next = new NextLook(on.plusMonths(3), "film after it");
        var data = new ProcedureData(on, false, "C. Surgeon", null, measured, List.of(acts), next);
        RecordOutcome outcome = treatments.record(child, new ProcedureId(ids.next()), data);
        if (outcome instanceof RecordOutcome.Stopped(var stops)) {
            throw new AssertionError("stopped: " + stops);
        }
    }
}
