package org.espalier.opinion;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.opinion.FactSheet.Line;
import org.espalier.patient.BodySize;
import org.espalier.patient.BoneAge;
import org.espalier.patient.Child;
import org.espalier.patient.ClinicalExamination;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.ImagingReport;
import org.espalier.patient.LabResult;
import org.espalier.patient.LegExamination;
import org.espalier.patient.LegText;
import org.espalier.prognosis.Arrival;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.reading.NumberText;
import org.espalier.reading.ReadNumber;
import org.espalier.reading.Reading;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Plan;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.TreatmentText;
import org.jspecify.annotations.Nullable;

/** Facts in words that hold no day. What a person typed freely is left out where it names the child. */
record FactSheets(Identity identity) {

    static FactSheet child(Child child, LocalDate today) {
        var sex = child.who().sex();
        return new FactSheet(
                Texts.of(FactKind.CHILD),
                List.of(
                        line("opinion.child.initials", Identity.initials(child.who())),
                        line("opinion.child.age", DateText.of(child.who().ageOn(today))),
                        line("opinion.child.sex", sex == null ? Texts.text("kit.not-known") : Texts.of(sex))));
    }

    FactSheet of(Diagnosis diagnosis) {
        var lines = new ArrayList<Line>();
        lines.add(line("opinion.sides", Texts.of(diagnosis.sides())));
        if (diagnosis.onset() != null) {
            lines.add(line("opinion.onset", Texts.of(diagnosis.onset())));
        }
        free("opinion.note", diagnosis.note()).ifPresent(lines::add);
        return new FactSheet(Texts.of(diagnosis.kind()), lines);
    }

    FactSheet of(ClinicalExamination visit) {
        var lines = new ArrayList<Line>();
        visit.gapOfKnees().ifPresent(gap -> lines.add(line("opinion.gap.knees", QuantityText.of(gap))));
        visit.gapOfAnkles().ifPresent(gap -> lines.add(line("opinion.gap.ankles", QuantityText.of(gap))));
        for (var side : Side.values()) {
            leg(side, visit.leg(side)).ifPresent(lines::add);
        }
        free("opinion.note", visit.note()).ifPresent(lines::add);
        return new FactSheet(Texts.of(FactKind.EXAMINATION), lines);
    }

    private static Optional<Line> leg(Side side, LegExamination leg) {
        return leg.isEmpty()
                ? Optional.empty()
                : Optional.of(new Line(Texts.of(side), String.join(", ", LegText.of(leg))));
    }

    static FactSheet of(BodySize size) {
        var lines = new ArrayList<Line>();
        if (size.height() != null) {
            lines.add(line("opinion.height", QuantityText.ofHeight(size.height())));
        }
        if (size.weight() != null) {
            lines.add(line("opinion.weight", QuantityText.of(size.weight())));
        }
        return new FactSheet(Texts.of(FactKind.BODY_SIZE), lines);
    }

    static FactSheet of(BoneAge age) {
        return new FactSheet(
                Texts.of(FactKind.BONE_AGE),
                List.of(
                        line("opinion.bone-age", DateText.of(age.age())),
                        line("opinion.method", Texts.of(age.method()))));
    }

    FactSheet of(LabResult result) {
        var lines = new ArrayList<Line>();
        lines.add(new Line(Texts.of(result.analyte()), result.value().toPlainString() + " " + Texts.of(result.unit())));
        free("opinion.lab-range", result.range()).ifPresent(lines::add);
        return new FactSheet(Texts.of(FactKind.LABORATORY), lines);
    }

    FactSheet of(ImagingReport report) {
        var lines = new ArrayList<Line>();
        lines.add(line("opinion.sides", Texts.of(report.sides())));
        if (report.bar() != null) {
            lines.add(line("opinion.bar", Texts.of(report.bar())));
        }
        if (report.barShare() != null) {
            lines.add(line("opinion.bar-share", Texts.text("opinion.percent", report.barShare())));
        }
        torsion("opinion.torsion.femur", report.femoralTorsion()).ifPresent(lines::add);
        torsion("opinion.torsion.tibia", report.tibialTorsion()).ifPresent(lines::add);
        free("opinion.report", report.report()).ifPresent(lines::add);
        return new FactSheet(Texts.of(report.modality()), lines);
    }

    private static Optional<Line> torsion(String name, @Nullable Angle torsion) {
        return Optional.ofNullable(torsion).map(angle -> line(name, angle(angle)));
    }

    /** The numbers as they were signed, each with the error of a second reading of the same film. */
    static FactSheet of(Reading reading) {
        return new FactSheet(
                Texts.of(FactKind.READING),
                Stream.concat(
                                Stream.of(line(
                                        "opinion.scale",
                                        Texts.text("opinion.scale."
                                                + reading.calibration().origin().name()))),
                                reading.numbers().stream().map(FactSheets::number))
                        .toList());
    }

    static Line number(ReadNumber number) {
        double value = number.value().orElseThrow();
        var text = NumberText.of(number.quantity(), value);
        return new Line(
                Texts.text("opinion.number", Texts.of(number.side()), NumberText.label(number.quantity())),
                NumberText.error(number.quantity())
                        .map(error -> Texts.text("opinion.with-error", text, error))
                        .orElse(text));
    }

    static FactSheet of(ProcedureData procedure) {
        return new FactSheet(
                Texts.of(FactKind.PROCEDURE),
                procedure.acts().stream()
                        .map(act -> line("opinion.done", TreatmentText.of(act)))
                        .toList());
    }

    FactSheet of(Plan plan) {
        var lines = new ArrayList<Line>();
        lines.add(line("opinion.planned", TreatmentText.of(plan)));
        free("opinion.intent", plan.intent()).ifPresent(lines::add);
        return new FactSheet(Texts.of(FactKind.PLAN), lines);
    }

    static FactSheet of(PhysisPrognosis physis, LocalDate today) {
        var lines = new ArrayList<Line>();
        lines.add(line("opinion.state", Texts.of(physis.state())));
        lines.add(line(
                "opinion.target",
                physis.last()
                        .map(last ->
                                NumberText.of(last.quantity(), physis.target().degrees()))
                        .orElseGet(() -> angle(physis.target()))));
        physis.last()
                .ifPresent(last -> lines.add(
                        new Line(NumberText.label(last.quantity()), NumberText.of(last.quantity(), last.value()))));
        physis.forecast().ifPresent(forecast -> lines.add(line("opinion.arrival", arrival(forecast.arrival(), today))));
        return new FactSheet(Texts.text("opinion.forecast", TreatmentText.of(physis.physis())), lines);
    }

    private static String arrival(Arrival arrival, LocalDate today) {
        return Texts.text(
                "opinion.arrival.months",
                months(arrival.middle(), today),
                months(arrival.earliest(), today),
                months(arrival.latest(), today),
                Math.round(100 * arrival.never()));
    }

    private static String months(Optional<LocalDate> day, LocalDate today) {
        return day.map(one -> Texts.text("opinion.in-months", ChronoUnit.MONTHS.between(today, one)))
                .orElseGet(() -> Texts.text("opinion.not-before-growth-ends"));
    }

    private static String angle(Angle angle) {
        return Texts.text("opinion.degrees", angle.degrees());
    }

    /** What was typed freely, unless it names the child. */
    Optional<Line> free(String name, @Nullable String text) {
        return text == null || text.isBlank()
                ? Optional.empty()
                : Optional.of(line(name, identity.isIn(text) ? Texts.text("opinion.left-out") : text));
    }

    private static Line line(String name, String value) {
        return new Line(Texts.text(name), value);
    }
}
