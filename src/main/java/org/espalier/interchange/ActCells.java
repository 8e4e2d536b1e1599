package org.espalier.interchange;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.stock.Explant;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.Question;
import org.jspecify.annotations.Nullable;

/** One thing that was done, as the cells of a row say it. */
final class ActCells {

    private static final Map<String, ProcedureKind> KINDS = Words.all(ProcedureKind.class);
    private static final Map<String, PlateSide> PLATE_SIDES = Words.all(PlateSide.class);
    private static final Map<String, Explant.Fate> FATES = Words.all(Explant.Fate.class);
    private static final Map<String, Question> QUESTIONS = Words.all(Question.class);
    private static final String BETWEEN = "\n";
    private static final String SAYS = ": ";
    private static final int MOST_PIECES = 40;

    private ActCells() {}

    /** What was done, told apart from what else was done that day. */
    static String content(Act act) {
        return String.join(
                "/",
                Words.of(act.kind()),
                act.side().letter(),
                Words.of(act.bone()),
                Words.of(act.end()),
                Words.of(act.plateSide()),
                act.implants(),
                Integer.toString(act.count()));
    }

    /** The same of a row. */
    static String content(ClinicRow row, ImplantNames implants) {
        var put = placed(row, implants);
        return String.join(
                "/",
                row.text("kind"),
                row.text("side"),
                row.text("bone"),
                row.text("end"),
                row.text("plate_side"),
                put.map(ImplantNames.Described::description).orElse(row.text("description")),
                put.map(one -> Integer.toString(one.pieces())).orElse(row.text("pieces")));
    }

    /** What an empty description stands for: that of the implant that is put in. */
    private static Optional<ImplantNames.Described> placed(ClinicRow row, ImplantNames implants) {
        return row.cells().isEmpty("description") ? implants.described(row) : Optional.empty();
    }

    static Optional<Act> read(ClinicRow row, ImplantNames implants, PieceCells pieceCells) {
        var cells = row.cells();
        var kind = cells.oneOf("kind", KINDS);
        var where = PhysisCells.read(row);
        var plateSide = PhysisCells.optional(row, "plate_side", PLATE_SIDES);
        var fate = PhysisCells.optional(row, "fate", FATES);
        var put = placed(row, implants);
        var description = put.map(ImplantNames.Described::description).or(() -> cells.name("description"));
        var pieces = put.map(ImplantNames.Described::pieces)
                .or(() -> cells.number("pieces", 0, MOST_PIECES).map(Double::intValue));
        var answers = answers(row);
        @Nullable ImplantId implant = cells.isEmpty("implant") ? null : implants.of(row);
        var lots = kind.flatMap(one -> pieceCells.read(row, one));
        if (where.isEmpty() || description.isEmpty() || pieces.isEmpty() || answers.isEmpty() || lots.isEmpty()) {
            return Optional.empty();
        }
        demandWhole(row, kind.get());
        var act = new Act(
                        kind.get(),
                        where.get().side(),
                        where.get().bone(),
                        where.get().end(),
                        plateSide.orElse(null),
                        implant,
                        description.get(),
                        pieces.get(),
                        answers.get(),
                        null,
                        null)
                .withPieces(lots.get());
        return Optional.of(fate.map(act::withFate).orElse(act));
    }

    private static void demandWhole(ClinicRow row, ProcedureKind kind) {
        if (kind.needsPhysis() && row.cells().isEmpty("bone")) {
            throw new RowRefused("bone", FileReason.WITHOUT_PHYSIS, Words.of(kind));
        }
        if (kind.needsPlateSide() && row.cells().isEmpty("plate_side")) {
            throw new RowRefused("plate_side", FileReason.WITHOUT_PLATE_SIDE, Words.of(kind));
        }
        if ((kind.isOnImplant() || kind.putsIn()) && row.cells().isEmpty("implant")) {
            throw new RowRefused("implant", FileReason.WITHOUT_IMPLANT, Words.of(kind));
        }
    }

    private static Optional<Map<Question, String>> answers(ClinicRow row) {
        Map<Question, String> answers = new EnumMap<>(Question.class);
        for (var line : row.text("answers").split("\\R")) {
            if (line.isBlank()) {
                continue;
            }
            var parts = line.split(SAYS, 2);
            var question = QUESTIONS.get(parts[0].strip());
            if (question == null || parts.length < 2) {
                row.cells().refuse("answers", FileReason.NOT_A_QUESTION, line);
                return Optional.empty();
            }
            answers.put(
                    question,
                    question.isAnsweredInWords()
                            ? parts[1].strip()
                            : parts[1].strip()
                                    .toUpperCase(java.util.Locale.ROOT)
                                    .replace(' ', '_'));
        }
        return Optional.of(answers);
    }

    /** The row of an act. */
    static List<String> row(
            String number, String procedure, ProcedureData data, Act act, ImplantList names, PieceCells pieceCells) {
        var implant = act.implant();
        boolean described = implant != null && act.kind().putsIn();
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("local_number", number);
        cells.put("procedure", procedure);
        cells.put("date", data.on().toString());
        cells.put("elsewhere", Words.of(data.elsewhere()));
        cells.put("surgeon", Words.text(data.surgeon()));
        cells.put("note", Words.text(data.note()));
        cells.put("next_date", data.next().date().toString());
        cells.put("next_why", data.next().why());
        cells.put("theatre_minutes", Words.text(data.measured().theatre()));
        cells.put("anaesthesia_minutes", Words.text(data.measured().anaesthesia()));
        cells.put("kind", Words.of(act.kind()));
        cells.put("side", act.side().letter());
        cells.put("bone", Words.of(act.bone()));
        cells.put("end", Words.of(act.end()));
        cells.put("plate_side", Words.of(act.plateSide()));
        cells.put("implant", implant == null ? "" : names.name(implant, act));
        cells.put("description", described ? "" : act.implants());
        cells.put("pieces", described ? "" : Integer.toString(act.count()));
        cells.put("lots", pieceCells.of(act));
        cells.put("fate", Words.of(act.fate()));
        cells.put("answers", answers(act));
        return Giving.row(cells, ClinicFile.PROCEDURES);
    }

    private static String answers(Act act) {
        return act.answers().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(answer -> Words.of(answer.getKey()) + SAYS + said(answer.getKey(), answer.getValue()))
                .collect(Collectors.joining(BETWEEN));
    }

    private static String said(Question question, String answer) {
        return question.isAnsweredInWords() ? answer.replaceAll("\\s+", " ") : Words.of(answer);
    }
}
