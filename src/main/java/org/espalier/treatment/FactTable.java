package org.espalier.treatment;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * Where facts of one kind are kept.
 *
 * @param day the column of the day a fact is about
 * @param columns its other columns
 */
record FactTable<F extends TreatmentFact>(
        String name,
        String day,
        List<String> columns,
        Function<F, Map<String, @Nullable Object>> values,
        Reader<F> reader) {

    /** Reads a fact from its row. */
    interface Reader<F> {

        F read(LocalDate on, ResultSet row) throws SQLException;
    }

    private static final JsonMapper JSON = new JsonMapper();
    private static final TypeReference<Map<String, String>> WORDS = new TypeReference<>() {};

    static final FactTable<Plan> PLANS = new FactTable<>(
            "treatment_plan",
            "planned_on",
            List.of(
                    "kind",
                    "side",
                    "bone",
                    "bone_end",
                    "plate_side",
                    "deformity",
                    "implants",
                    "intent",
                    "expectation",
                    "asked_on",
                    "theatre_on",
                    "past_target_deg"),
            plan -> values(
                    plan.kind(),
                    plan.side(),
                    plan.bone(),
                    plan.end(),
                    plan.plateSide(),
                    plan.deformity(),
                    plan.implants(),
                    plan.intent(),
                    plan.expectation(),
                    plan.askedOn(),
                    plan.theatreOn(),
                    plan.pastTarget()),
            (on, row) -> new Plan(
                    on,
                    ProcedureKind.valueOf(row.getString("kind")),
                    Side.valueOf(row.getString("side")),
                    constant(row, "bone", Bone.class),
                    constant(row, "bone_end", BoneEnd.class),
                    constant(row, "plate_side", PlateSide.class),
                    constant(row, "deformity", Deformity.class),
                    row.getString("implants"),
                    row.getString("intent"),
                    row.getString("expectation"),
                    row.getObject("asked_on", LocalDate.class),
                    row.getObject("theatre_on", LocalDate.class),
                    angle(row, "past_target_deg")));

    static final FactTable<Target> TARGETS = new FactTable<>(
            "treatment_target",
            "signed_on",
            List.of("side", "bone", "bone_end", "angle_deg", "because"),
            target -> values(target.side(), target.bone(), target.end(), target.angle(), target.because()),
            (on, row) -> new Target(
                    on,
                    Side.valueOf(row.getString("side")),
                    constant(row, "bone", Bone.class),
                    constant(row, "bone_end", BoneEnd.class),
                    new Angle(row.getDouble("angle_deg")),
                    row.getString("because")));

    static final FactTable<ImplantFinding> FINDINGS = new FactTable<>(
            "implant_finding",
            "seen_on",
            List.of("implant", "part", "finding", "told_on", "note"),
            seen -> values(seen.implant(), seen.part(), seen.seen(), seen.toldOn(), seen.note()),
            (on, row) -> new ImplantFinding(
                    on,
                    new ImplantId(row.getObject("implant", UUID.class)),
                    ImplantFinding.Part.valueOf(row.getString("part")),
                    ImplantFinding.Seen.valueOf(row.getString("finding")),
                    row.getObject("told_on", LocalDate.class),
                    row.getString("note")));

    static final FactTable<Maturity> MATURITIES = new FactTable<>(
            "physis_maturity",
            "film_on",
            List.of("side", "bone", "bone_end", "reader_name", "retained_told_on", "remove_by"),
            closed -> values(
                    closed.side(),
                    closed.bone(),
                    closed.end(),
                    closed.reader(),
                    closed.retainedToldOn(),
                    closed.removeBy()),
            (on, row) -> new Maturity(
                    on,
                    Side.valueOf(row.getString("side")),
                    Bone.valueOf(row.getString("bone")),
                    BoneEnd.valueOf(row.getString("bone_end")),
                    row.getString("reader_name"),
                    row.getObject("retained_told_on", LocalDate.class),
                    row.getObject("remove_by", LocalDate.class)));

    static final FactTable<CareStep> CARE_STEPS = new FactTable<>(
            "care_step",
            "happened_on",
            List.of("side", "step", "why_ended", "note"),
            step -> values(step.side(), step.step(), step.whyEnded(), step.note()),
            (on, row) -> new CareStep(
                    on,
                    constant(row, "side", Side.class),
                    CareStep.Step.valueOf(row.getString("step")),
                    constant(row, "why_ended", CareStep.EndReason.class),
                    row.getString("note")));

    static final FactTable<Complication> COMPLICATIONS = new FactTable<>(
            "complication",
            "seen_on",
            List.of("session_id", "side", "kind", "grade", "note"),
            one -> values(one.procedure(), one.side(), one.kind(), one.grade().ordinal() + 1, one.note()),
            (on, row) -> new Complication(
                    on,
                    Complication.Kind.valueOf(row.getString("kind")),
                    Complication.Grade.values()[row.getInt("grade") - 1],
                    procedure(row),
                    constant(row, "side", Side.class),
                    row.getString("note")));

    static final FactTable<TheatreCheck> CHECKS = new FactTable<>(
            "theatre_check",
            "checked_on",
            List.of("phase", "answers"),
            check -> values(check.phase(), json(check.answers())),
            (on, row) -> new TheatreCheck(
                    on, TheatreCheck.Phase.valueOf(row.getString("phase")), answers(row.getString("answers"))));

    /** Where the fact is kept. */
    @SuppressWarnings("unchecked")
    static <F extends TreatmentFact> FactTable<F> of(F fact) {
        return (FactTable<F>)
                switch (fact) {
                    case Plan plan -> PLANS;
                    case Target target -> TARGETS;
                    case ImplantFinding finding -> FINDINGS;
                    case Maturity closed -> MATURITIES;
                    case CareStep step -> CARE_STEPS;
                    case Complication complication -> COMPLICATIONS;
                    case TheatreCheck check -> CHECKS;
                };
    }

    /** The columns of a fact with what stands in them; all empty for a withdrawal. */
    Map<String, @Nullable Object> row(@Nullable F fact) {
        var row = new LinkedHashMap<String, @Nullable Object>();
        var filled = fact == null ? Map.<String, @Nullable Object>of() : values.apply(fact);
        for (int at = 0; at < columns.size(); at++) {
            row.put(columns.get(at), filled.get(String.valueOf(at)));
        }
        return row;
    }

    static String json(Map<Question, String> answers) {
        return JSON.writeValueAsString(answers);
    }

    static Map<Question, String> answers(String json) {
        var answers = new EnumMap<Question, String>(Question.class);
        JSON.readValue(json, WORDS).forEach((question, text) -> answers.put(Question.valueOf(question), text));
        return answers;
    }

    static <E extends Enum<E>> @Nullable E constant(ResultSet row, String column, Class<E> type) throws SQLException {
        var name = row.getString(column);
        return name == null ? null : Enum.valueOf(type, name);
    }

    private static @Nullable Angle angle(ResultSet row, String column) throws SQLException {
        var degrees = row.getBigDecimal(column);
        return degrees == null ? null : new Angle(degrees.doubleValue());
    }

    private static @Nullable ProcedureId procedure(ResultSet row) throws SQLException {
        var id = row.getObject("session_id", UUID.class);
        return id == null ? null : new ProcedureId(id);
    }

    /** What is given, by its place among the columns, as the database takes it. */
    private static Map<String, @Nullable Object> values(@Nullable Object... given) {
        var values = new LinkedHashMap<String, @Nullable Object>();
        for (int at = 0; at < given.length; at++) {
            values.put(String.valueOf(at), plain(given[at]));
        }
        return values;
    }

    private static @Nullable Object plain(@Nullable Object value) {
        return switch (value) {
            case null -> null;
            case Enum<?> constant -> constant.name();
            case Angle angle -> BigDecimal.valueOf(angle.degrees());
            case ImplantId implant -> implant.value();
            case ProcedureId procedure -> procedure.value();
            default -> value;
        };
    }
}
