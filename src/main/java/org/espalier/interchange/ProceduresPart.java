package org.espalier.interchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.patient.ChildId;
import org.espalier.treatment.Act;
import org.espalier.treatment.MeasuredMinutes;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.StockRefused;
import org.espalier.treatment.TreatmentService;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * What was done: one row a procedure on one physis or limb, those of one anaesthetic under one name, and what each
 * implant is. Taken before the readings are, since what was done long ago is not held up against what was read since.
 */
@Component
@Order(5)
class ProceduresPart implements ClinicPart {

    /**
     * Something of one day: what was planned comes before what was done, so that a plan is done by what came after it.
     */
    private record Step(String day, Runnable work) {}

    private static final List<String> HEAD = List.of(
            "date", "elsewhere", "surgeon", "note", "next_date", "next_why", "theatre_minutes", "anaesthesia_minutes");

    /** Rows that were done in one go. */
    private record Key(String number, String procedure) {}

    private final TreatmentService treatments;
    private final FactTaking facts;
    private final PlanSheet plans;
    private final PieceCells pieces;

    ProceduresPart(TreatmentService treatments, FactTaking facts, PlanSheet plans, PieceCells pieces) {
        this.treatments = treatments;
        this.facts = facts;
        this.plans = plans;
        this.pieces = pieces;
    }

    @Override
    public void take(Taking taking) {
        var implants = new ImplantNames(taking.site().value());
        var implantRows = taking.rows(ClinicFile.IMPLANTS);
        implantRows.forEach(implants::read);
        var planned = taking.rows(ClinicFile.PLANS).stream()
                .map(row -> new Step(row.text("date"), () -> taking.take(row, () -> facts.take(taking, row, plans))));
        var done = taking.rows(ClinicFile.PROCEDURES).stream()
                .collect(Collectors.groupingBy(
                        row -> new Key(row.text("local_number"), row.text("procedure")),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .values()
                .stream()
                .map(rows -> new Step(
                        rows.getFirst().text("date"), () -> taking.take(rows, () -> take(taking, rows, implants))));
        Stream.concat(planned, done).sorted(Comparator.comparing(Step::day)).forEach(step -> step.work()
                .run());
        implantRows.forEach(row -> taking.take(row, () -> implants.effect(row)));
    }

    private Effect take(Taking taking, List<ClinicRow> rows, ImplantNames implants) {
        var first = rows.getFirst();
        var cells = first.cells();
        Optional<ChildId> child = taking.child(first);
        Optional<LocalDate> on = cells.date("date");
        Optional<Boolean> elsewhere = cells.oneOf("elsewhere", Words.YES_NO);
        Optional<LocalDate> nextOn = cells.date("next_date");
        Optional<String> nextWhy = cells.name("next_why");
        var measured = new MeasuredMinutes(minutes(first, "theatre_minutes"), minutes(first, "anaesthesia_minutes"));
        rows.stream().skip(1).forEach(row -> demandSameHead(first, row));
        if (child.isEmpty() || on.isEmpty() || elsewhere.isEmpty() || nextOn.isEmpty() || nextWhy.isEmpty()) {
            return Effect.KNOWN;
        }
        var known = known(child.get());
        var wanted = rows.stream().map(row -> ActCells.content(row, implants)).toList();
        var same = known.get(on.get() + " " + wanted);
        if (same != null) {
            demandSamePieces(rows, same.acts());
            demandSameMinutes(first, measured, same.measured());
            implants.areThose(rows, same.acts());
            return Effect.KNOWN;
        }
        var acts = rows.stream()
                .flatMap(row -> ActCells.read(row, implants, pieces).stream())
                .toList();
        if (acts.size() < rows.size()) {
            return Effect.KNOWN;
        }
        var data = new ProcedureData(
                on.get(),
                elsewhere.get(),
                first.textOrNull("surgeon"),
                first.textOrNull("note"),
                measured,
                acts,
                new NextLook(nextOn.get(), nextWhy.get()));
        var id = new ProcedureId(StableIds.of(child.get().value(), "procedure", on.get() + " " + wanted));
        record(child.get(), id, data);
        implants.areNew(rows);
        return Effect.NEW;
    }

    private static List<String> lines(String cell) {
        return cell.lines().map(String::strip).toList();
    }

    private static void demandSameHead(ClinicRow first, ClinicRow row) {
        for (var column : HEAD) {
            if (!row.text(column).equals(first.text(column))) {
                row.cells().refuse(column, FileReason.OTHERWISE_ABOVE, first.line(), first.text(column));
            }
        }
    }

    private void record(ChildId child, ProcedureId id, ProcedureData data) {
        try {
            FactTaking.demand(treatments.record(child, id, data), "kind");
        } catch (StockRefused refused) {
            throw new RowRefused("lots", FileReason.REFUSED, refused.text());
        }
    }

    /**
     * What is said of pieces and lots is what is on record; where a row says nothing of them, that is no contradiction.
     */
    private void demandSamePieces(List<ClinicRow> rows, List<Act> acts) {
        for (int i = 0; i < rows.size(); i++) {
            var said = rows.get(i).text("lots");
            if (!said.isEmpty() && !pieces.areThose(lines(said), lines(pieces.of(acts.get(i))))) {
                rows.get(i).cells().refuse("lots", FileReason.PIECES_ON_RECORD);
            }
        }
    }

    /** How long it took by the clock; what is not known stays empty, and is then no contradiction. */
    private static @Nullable Integer minutes(ClinicRow row, String column) {
        return row.cells().isEmpty(column)
                ? null
                : row.cells()
                        .number(column, 1, MeasuredMinutes.MOST)
                        .map(Double::intValue)
                        .orElse(null);
    }

    private static void demandSameMinutes(ClinicRow row, MeasuredMinutes said, MeasuredMinutes known) {
        demandSameMinutes(row, "theatre_minutes", said.theatre(), known.theatre());
        demandSameMinutes(row, "anaesthesia_minutes", said.anaesthesia(), known.anaesthesia());
    }

    private static void demandSameMinutes(
            ClinicRow row, String column, @Nullable Integer said, @Nullable Integer known) {
        if (said != null && !said.equals(known)) {
            row.cells().refuse(column, FileReason.MINUTES_ON_RECORD);
        }
    }

    /** What stands on record, by day and content. */
    private Map<String, ProcedureData> known(ChildId child) {
        Map<String, ProcedureData> known = new HashMap<>();
        standing(child)
                .forEach(data -> known.put(
                        data.on() + " "
                                + data.acts().stream().map(ActCells::content).toList(),
                        data));
        return known;
    }

    private List<ProcedureData> standing(ChildId child) {
        return treatments.of(child).standing().stream()
                .map(Procedure::data)
                .flatMap(Optional::stream)
                .toList();
    }

    @Override
    public Map<ClinicFile, List<List<String>>> rows(Giving giving) {
        List<List<String>> procedures = new ArrayList<>();
        List<List<String>> implants = new ArrayList<>();
        for (var one : giving.children()) {
            var names = new ImplantList();
            int number = 0;
            for (var data : standing(one.child().id())) {
                number++;
                for (var act : data.acts()) {
                    procedures.add(ActCells.row(one.number(), Integer.toString(number), data, act, names, pieces));
                }
            }
            names.rows(one.number()).forEach(implants::add);
        }
        return Map.of(
                ClinicFile.PLANS,
                facts.rows(giving, plans),
                ClinicFile.IMPLANTS,
                implants,
                ClinicFile.PROCEDURES,
                procedures);
    }
}
