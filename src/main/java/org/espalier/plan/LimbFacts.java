package org.espalier.plan;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.espalier.kit.Who;
import org.espalier.patient.BodySize;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.DiagnosisKind;
import org.espalier.patient.Examination;
import org.espalier.patient.ImagingReport;
import org.espalier.patient.LegAngle;
import org.espalier.patient.Onset;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.prognosis.Ahead;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.growth.BodyMassIndex;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;

/** What is on record about a limb, as far as it speaks to an option. */
record LimbFacts(Ahead ahead, Side side) {

    private static final double HEAVY_INDEX = 35;
    private static final Age BRACED_BEFORE = Age.ofYears(3);
    private static final Age FOURTH_BIRTHDAY = Age.ofYears(4);
    private static final Age UNDER_EIGHT = Age.ofYears(8);
    private static final double LATE_BOYS = 14;
    private static final double LATE_GIRLS = 12.5;
    private static final double TORSION_TOLD = 10;
    private static final double DEPRESSED = 10;

    Age age() {
        return switch (ahead.prognosis().child().who()) {
            case Who.Named named -> Age.between(named.birthDate(), today());
            case Who.Initialled initialled ->
                Age.between(initialled.birthMonth().atDay(1), today());
        };
    }

    boolean isBraced() {
        return age().compareTo(BRACED_BEFORE) < 0;
    }

    boolean isUnderEight() {
        return age().compareTo(UNDER_EIGHT) < 0;
    }

    boolean isHeavy() {
        return examination().sizes().findings().reversed().stream()
                .map(BodySize::index)
                .flatMap(Optional::stream)
                .findFirst()
                .map(BodyMassIndex::kilogramsPerSquareMetre)
                .filter(index -> index >= HEAVY_INDEX)
                .isPresent();
    }

    boolean isLateForPlate() {
        return ahead.prognosis()
                .age()
                .filter(age -> age.age().decimalYears() >= (age.sex() == Sex.MALE ? LATE_BOYS : LATE_GIRLS))
                .isPresent();
    }

    boolean isDecidedBeforeFourth() {
        return isDiagnosed(diagnosis -> diagnosis.kind() == DiagnosisKind.TIBIA_VARA
                        && (diagnosis.onset() == Onset.EARLY || diagnosis.onset() == Onset.INFANTILE))
                && age().compareTo(FOURTH_BIRTHDAY) < 0;
    }

    boolean hasBoneDisease() {
        return isDiagnosed(diagnosis -> switch (diagnosis.kind()) {
            case RICKETS_NUTRITIONAL, RICKETS_HYPOPHOSPHATAEMIC, RICKETS_OTHER, RENAL -> true;
            default -> false;
        });
    }

    boolean isDysplasia() {
        return isDiagnosed(diagnosis -> diagnosis.kind() == DiagnosisKind.SKELETAL_DYSPLASIA);
    }

    /** The stage as read on the latest film that has one. */
    Optional<TibiaVaraStage.Stage> stage() {
        return examination().stages().findings().stream()
                .filter(stage -> stage.side() == side)
                .map(TibiaVaraStage::stage)
                .reduce((earlier, later) -> later);
    }

    boolean isStage(TibiaVaraStage.Stage least) {
        return stage().filter(stage -> stage.compareTo(least) >= 0).isPresent();
    }

    boolean hasBar() {
        boolean seen = examination().imaging().findings().stream()
                .filter(report -> report.sides().covers(side))
                .anyMatch(report -> report.bar() != null && report.bar() != ImagingReport.Bar.NONE);
        return seen
                || isDiagnosed(diagnosis -> switch (diagnosis.kind()) {
                    case BONY_BAR, FIBROCARTILAGINOUS_BAR, PARTIAL_GROWTH_ARREST -> true;
                    default -> false;
                });
    }

    boolean isDepressed() {
        return isStage(TibiaVaraStage.Stage.V)
                || ahead.films()
                        .latest(side, Quantity.PLATEAU_DEPRESSION)
                        .filter(film -> film.value() >= DEPRESSED)
                        .isPresent();
    }

    /** Whether the thigh-foot angle was last found ten degrees and more inward, or a report tells such torsion. */
    boolean isTwisted() {
        var byHand = examination().angles(side, LegAngle.THIGH_FOOT).stream()
                .map(dated -> dated.value().degrees())
                .reduce((earlier, later) -> later);
        var reported = examination().imaging().findings().stream()
                .filter(report -> report.sides().covers(side))
                .flatMap(report -> Stream.ofNullable(report.tibialTorsion()))
                .map(angle -> angle.degrees())
                .reduce((earlier, later) -> later);
        return Stream.concat(byHand.stream(), reported.stream()).anyMatch(degrees -> degrees <= -TORSION_TOLD);
    }

    private boolean isDiagnosed(Predicate<Diagnosis> kind) {
        return examination().diagnoses().findings().stream()
                .filter(diagnosis -> diagnosis.sides().covers(side))
                .anyMatch(kind);
    }

    private Examination examination() {
        return ahead.examination();
    }

    private LocalDate today() {
        return ahead.today();
    }
}
