package org.espalier.interchange;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.BodySize;
import org.espalier.patient.BoneAge;
import org.espalier.patient.BoneAgeMethod;
import org.espalier.patient.BoneDisease;
import org.espalier.patient.ClinicalExamination;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.DiagnosisKind;
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
import org.espalier.patient.SleepSymptoms;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.espalier.science.quantity.Weight;
import org.jspecify.annotations.Nullable;

/** Reads the items of one finding back; an item nobody asked for, or one that stands twice, is refused. */
final class FindingReading {

    private static final String VALUE = "value";

    private final List<ClinicRow> rows;
    private final Set<ClinicRow> used = new HashSet<>();

    FindingReading(List<ClinicRow> rows) {
        this.rows = rows;
    }

    /** The finding; an exception says what is wrong with it as a whole. */
    Finding read(FindingKind kind, LocalDate on) {
        Finding finding =
                switch (kind) {
                    case BODY_SIZE ->
                        new BodySize(
                                on,
                                number("height_cm").map(Length::ofCentimetres).orElse(null),
                                number("weight_kg").map(Weight::ofKilograms).orElse(null));
                    case BONE_AGE -> boneAge(on);
                    case DIAGNOSIS -> diagnosis(on);
                    case EXAMINATION -> examination(on);
                    case LABORATORY ->
                        new LabResult(
                                on,
                                needed("analyte", LabAnalyte.class),
                                new BigDecimal(needed(VALUE)),
                                needed("unit", LabUnit.class),
                                text("range"));
                    case BONE_DISEASE ->
                        new BoneDisease(on, needed("control", BoneDisease.Control.class), text("note"));
                    case IMAGING -> imaging(on);
                    case STAGE -> stage(on);
                };
        rows.stream().filter(row -> !used.contains(row)).forEach(FindingReading::refuse);
        return finding;
    }

    private BoneAge boneAge(LocalDate on) {
        return new BoneAge(
                on,
                months("bone_age_months").orElseThrow(() -> missing("bone_age_months")),
                needed("method", BoneAgeMethod.class),
                text("reader"));
    }

    private Diagnosis diagnosis(LocalDate on) {
        return new Diagnosis(
                on,
                needed("diagnosis", DiagnosisKind.class),
                needed("sides", AffectedSides.class),
                constant("onset", Onset.class).orElse(null),
                months("onset_age_months").orElse(null),
                text("note"));
    }

    private ClinicalExamination examination(LocalDate on) {
        return new ClinicalExamination(
                on,
                number("intercondylar_mm").map(Length::ofMillimetres).orElse(null),
                number("intermalleolar_mm").map(Length::ofMillimetres).orElse(null),
                leg(Side.RIGHT),
                leg(Side.LEFT),
                whole("hypermobility").orElse(null),
                constant("sleep", SleepSymptoms.class).orElse(null),
                text("note"));
    }

    private LegExamination leg(Side side) {
        Map<LegAngle, Angle> angles = new EnumMap<>(LegAngle.class);
        Map<LegSign, LegAnswer> signs = new EnumMap<>(LegSign.class);
        for (var angle : LegAngle.values()) {
            find(FindingItems.name(angle), side)
                    .ifPresent(row -> number(row).ifPresent(degrees -> angles.put(angle, Angle.ofDegrees(degrees))));
        }
        for (var sign : LegSign.values()) {
            find(FindingItems.name(sign), side)
                    .ifPresent(row -> answer(row, sign).ifPresent(answer -> signs.put(sign, answer)));
        }
        return new LegExamination(angles, signs);
    }

    private static Optional<LegAnswer> answer(ClinicRow row, LegSign sign) {
        var wanted = row.text(VALUE);
        var found = sign.answers().stream()
                .filter(one -> Words.of(one.name()).equals(wanted))
                .findFirst();
        if (found.isEmpty()) {
            var known = sign.answers().stream().map(one -> Words.of(one.name())).collect(Collectors.joining(" | "));
            row.cells().refuse(VALUE, FileReason.NOT_KNOWN, wanted, known);
        }
        return found;
    }

    private ImagingReport imaging(LocalDate on) {
        return new ImagingReport(
                on,
                needed("modality", ImagingReport.Modality.class),
                needed("sides", AffectedSides.class),
                constant("bar", ImagingReport.Bar.class).orElse(null),
                whole("bar_share_percent").orElse(null),
                number("femoral_torsion_deg").map(Angle::ofDegrees).orElse(null),
                number("tibial_torsion_deg").map(Angle::ofDegrees).orElse(null),
                needed("reported_by"),
                text("report"));
    }

    private TibiaVaraStage stage(LocalDate on) {
        var side = Arrays.stream(Side.values())
                .filter(one -> rows.stream().anyMatch(row -> row.text("side").equals(one.letter())))
                .findFirst()
                .orElseThrow(() -> new RowRefused("side", FileReason.STAGE_WITHOUT_SIDE));
        var row = find("stage", side).orElseThrow(() -> missing("stage"));
        return new TibiaVaraStage(
                on, side, constant(row, TibiaVaraStage.Stage.class, true).orElseThrow(() -> missing("stage")));
    }

    private Optional<ClinicRow> find(String item, @Nullable Side side) {
        var letter = side == null ? "" : side.letter();
        var found = new ArrayList<>(rows.stream()
                .filter(row -> row.text("item").equals(item) && row.text("side").equals(letter))
                .toList());
        if (found.isEmpty()) {
            return Optional.empty();
        }
        found.forEach(used::add);
        found.stream().skip(1).forEach(row -> row.cells().refuse("item", FileReason.ITEM_TWICE, item));
        return Optional.of(found.getFirst());
    }

    private @Nullable String text(String item) {
        return find(item, null)
                .map(row -> row.text(VALUE))
                .filter(text -> !text.isEmpty())
                .orElse(null);
    }

    private String needed(String item) {
        return Optional.ofNullable(text(item)).orElseThrow(() -> missing(item));
    }

    private Optional<Double> number(String item) {
        return find(item, null).flatMap(FindingReading::number);
    }

    private static Optional<Double> number(ClinicRow row) {
        return row.cells().number(VALUE, -1000, 100_000);
    }

    private Optional<Integer> whole(String item) {
        return find(item, null)
                .flatMap(row -> row.cells().number(VALUE, 0, 1000).flatMap(number -> {
                    if (number != Math.rint(number)) {
                        row.cells().refuse(VALUE, FileReason.NOT_WHOLE, row.text(VALUE));
                        return Optional.empty();
                    }
                    return Optional.of(number.intValue());
                }));
    }

    private Optional<Age> months(String item) {
        return whole(item).map(Age::ofMonths);
    }

    private <E extends Enum<E>> E needed(String item, Class<E> type) {
        return constant(item, type).orElseThrow(() -> missing(item));
    }

    private <E extends Enum<E>> Optional<E> constant(String item, Class<E> type) {
        return find(item, null).flatMap(row -> constant(row, type, false));
    }

    private static <E extends Enum<E>> Optional<E> constant(ClinicRow row, Class<E> type, boolean asNamed) {
        var known = Words.all(type);
        if (asNamed) {
            Arrays.stream(type.getEnumConstants()).forEach(one -> known.put(one.name(), one));
        }
        return row.cells().oneOf(VALUE, known);
    }

    private static RowRefused missing(String item) {
        return new RowRefused("item", FileReason.ITEM_MISSING, item);
    }

    private static void refuse(ClinicRow row) {
        row.cells().refuse("item", FileReason.ITEM_NOT_OF_KIND, row.text("item"));
    }
}
