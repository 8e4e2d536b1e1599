package org.espalier.interchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.espalier.patient.BodySize;
import org.espalier.patient.BoneAge;
import org.espalier.patient.BoneDisease;
import org.espalier.patient.ClinicalExamination;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.Finding;
import org.espalier.patient.ImagingReport;
import org.espalier.patient.LabResult;
import org.espalier.patient.LegAngle;
import org.espalier.patient.LegSign;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** Findings as items, each its own row; what was not recorded has none. */
final class FindingItems {

    private static final int MM_PER_CM = 10;

    private final List<FindingItem> items = new ArrayList<>();

    private FindingItems() {}

    static List<FindingItem> of(Finding finding) {
        var told = new FindingItems();
        switch (finding) {
            case BodySize size -> told.size(size);
            case BoneAge age -> told.boneAge(age);
            case Diagnosis diagnosis -> told.diagnosis(diagnosis);
            case ClinicalExamination visit -> told.examination(visit);
            case LabResult lab -> told.lab(lab);
            case BoneDisease disease -> told.add("control", disease.control()).add("note", disease.note());
            case ImagingReport report -> told.imaging(report);
            case TibiaVaraStage stage ->
                told.items.add(
                        FindingItem.of("stage", stage.side(), stage.stage().name()));
        }
        return List.copyOf(told.items);
    }

    private void size(BodySize size) {
        var height = size.height();
        var weight = size.weight();
        add("height_cm", height == null ? null : Words.of(height.millimetres() / MM_PER_CM, 1));
        add("weight_kg", weight == null ? null : Words.of(weight.kilograms(), 1));
    }

    private void boneAge(BoneAge age) {
        add("bone_age_months", Integer.toString(age.age().completedMonths()));
        add("method", age.method());
        add("reader", age.reader());
    }

    private void diagnosis(Diagnosis diagnosis) {
        var onsetAge = diagnosis.onsetAge();
        add("diagnosis", diagnosis.kind());
        add("sides", diagnosis.sides());
        add("onset", diagnosis.onset());
        add("onset_age_months", onsetAge == null ? null : Integer.toString(onsetAge.completedMonths()));
        add("note", diagnosis.note());
    }

    private void examination(ClinicalExamination visit) {
        add("intercondylar_mm", millimetres(visit.intercondylar()));
        add("intermalleolar_mm", millimetres(visit.intermalleolar()));
        Stream.of(Side.RIGHT, Side.LEFT).forEach(side -> leg(visit, side));
        var score = visit.hypermobility();
        add("hypermobility", score == null ? null : score.toString());
        add("sleep", visit.sleep());
        add("note", visit.note());
    }

    private void leg(ClinicalExamination visit, Side side) {
        var leg = visit.leg(side);
        Arrays.stream(LegAngle.values()).forEach(angle -> leg.angle(angle)
                .ifPresent(found -> items.add(FindingItem.of(name(angle), side, degrees(found)))));
        Arrays.stream(LegSign.values()).forEach(sign -> leg.answer(sign)
                .ifPresent(found -> items.add(FindingItem.of(name(sign), side, Words.of(found.name())))));
    }

    private void lab(LabResult lab) {
        add("analyte", lab.analyte());
        add("value", lab.value().toPlainString());
        add("unit", lab.unit());
        add("range", lab.range());
    }

    private void imaging(ImagingReport report) {
        var share = report.barShare();
        var femoral = report.femoralTorsion();
        var tibial = report.tibialTorsion();
        add("modality", report.modality());
        add("sides", report.sides());
        add("bar", report.bar());
        add("bar_share_percent", share == null ? null : share.toString());
        add("femoral_torsion_deg", femoral == null ? null : degrees(femoral));
        add("tibial_torsion_deg", tibial == null ? null : degrees(tibial));
        add("reported_by", report.reportedBy());
        add("report", report.report());
    }

    static String name(LegAngle angle) {
        return angle.name().toLowerCase(Locale.ROOT) + "_deg";
    }

    static String name(LegSign sign) {
        return sign.name().toLowerCase(Locale.ROOT);
    }

    private FindingItems add(String name, @Nullable Enum<?> constant) {
        return add(name, constant == null ? null : Words.of(constant));
    }

    private FindingItems add(String name, @Nullable String value) {
        if (value != null && !value.isEmpty()) {
            items.add(FindingItem.of(name, value));
        }
        return this;
    }

    private static @Nullable String millimetres(@Nullable Length length) {
        return length == null ? null : Words.of(length.millimetres(), 1);
    }

    private static String degrees(Angle angle) {
        return Words.of(angle.degrees(), 1);
    }
}
