package org.espalier.patient.ui;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.patient.BoneDisease;
import org.espalier.patient.ClinicalExamination;
import org.espalier.patient.ImagingReport;
import org.espalier.patient.LabResult;
import org.espalier.patient.LegExamination;
import org.espalier.patient.LegText;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.patient.ui.FactTable.Column;
import org.espalier.science.quantity.Angle;
import org.jspecify.annotations.Nullable;

/** What the tables of visits and of the work-up show. What was not recorded says so. */
final class WorkUpColumns {

    private WorkUpColumns() {}

    static List<Column<ClinicalExamination>> visit() {
        return List.of(
                new Column<>("patient.whole", WorkUpColumns::whole),
                new Column<>("patient.AffectedSides.RIGHT", visit -> leg(visit.right())),
                new Column<>("patient.AffectedSides.LEFT", visit -> leg(visit.left())));
    }

    static List<Column<LabResult>> lab() {
        return List.of(
                new Column<>("patient.lab.analyte", result -> Texts.of(result.analyte())),
                new Column<>(
                        "patient.lab.value",
                        result -> Texts.text(
                                "patient.lab.with-unit", result.value().toPlainString(), Texts.of(result.unit()))),
                new Column<>("patient.lab.range", result -> orNotRecorded(result.range())));
    }

    static List<Column<BoneDisease>> boneDisease() {
        return List.of(
                new Column<>("patient.bone-disease.control", disease -> Texts.of(disease.control())),
                new Column<>("patient.note", disease -> orNotRecorded(disease.note())));
    }

    static List<Column<TibiaVaraStage>> stage() {
        return List.of(
                new Column<>("patient.sides", stage -> Texts.of(stage.side())),
                new Column<>("patient.stage", stage -> Texts.of(stage.stage())));
    }

    static List<Column<ImagingReport>> imaging() {
        return List.of(
                new Column<>("patient.modality", report -> Texts.of(report.modality())),
                new Column<>("patient.sides", report -> Texts.of(report.sides())),
                new Column<>("patient.bar", WorkUpColumns::bar),
                new Column<>("patient.torsion", WorkUpColumns::torsion),
                new Column<>("patient.reported-by", ImagingReport::reportedBy),
                new Column<>("patient.report", report -> orNotRecorded(report.report())));
    }

    private static String whole(ClinicalExamination visit) {
        return orNotRecorded(Stream.of(
                        visit.gapOfKnees().map(gap -> named("patient.intercondylar", QuantityText.of(gap))),
                        visit.gapOfAnkles().map(gap -> named("patient.intermalleolar", QuantityText.of(gap))),
                        Optional.ofNullable(visit.hypermobility())
                                .map(score -> named(
                                        "patient.hypermobility", Texts.text("patient.hypermobility.score", score))),
                        Optional.ofNullable(visit.sleep()).map(sleep -> named("patient.sleep", Texts.of(sleep))),
                        Optional.ofNullable(visit.note()))
                .flatMap(Optional::stream)
                .collect(Collectors.joining("; ")));
    }

    private static String leg(LegExamination leg) {
        return orNotRecorded(String.join("; ", LegText.of(leg)));
    }

    private static String bar(ImagingReport report) {
        if (report.bar() == null) {
            return Texts.text("patient.not-recorded");
        }
        return report.barShare() == null
                ? Texts.of(report.bar())
                : Texts.text("patient.bar.with-share", Texts.of(report.bar()), report.barShare());
    }

    private static String torsion(ImagingReport report) {
        return orNotRecorded(Stream.of(
                        torsion("patient.torsion.femoral", report.femoralTorsion(), "patient.direction.femoral."),
                        torsion("patient.torsion.tibial", report.tibialTorsion(), "patient.direction.THIGH_FOOT."))
                .flatMap(Optional::stream)
                .collect(Collectors.joining("; ")));
    }

    private static Optional<String> torsion(String name, @Nullable Angle angle, String directions) {
        return Optional.ofNullable(angle)
                .map(one -> named(
                        name,
                        one.degrees() == 0
                                ? Texts.text("patient.angle.plain", 0)
                                : Texts.text(
                                        "patient.angle.directed",
                                        Math.round(Math.abs(one.degrees())),
                                        Texts.text(directions + (one.degrees() > 0 ? "plus" : "minus")))));
    }

    private static String named(String name, String value) {
        return Texts.text("patient.named", Texts.text(name), value);
    }

    private static String orNotRecorded(@Nullable String text) {
        return text == null || text.isEmpty() ? Texts.text("patient.not-recorded") : text;
    }
}
