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
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.TreatmentService;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * What was done: one row a procedure on one physis or limb, those of one anaesthetic under one name, and what each implant
 * is. Taken before the readings are, since what was done long ago is not held up against what was read since.
 */
@Component
@Order(4)
class ProceduresPart implements ClinicPart {

    /** Rows that were done in one go. */
    private record Key(String number, String procedure) {}

    private final TreatmentService treatments;

    ProceduresPart(TreatmentService treatments) {
        this.treatments = treatments;
    }

    @Override
    public void take(Taking taking) {
        var implants = new ImplantNames(taking.site().value());
        var implantRows = taking.rows(ClinicFile.IMPLANTS);
        implantRows.forEach(implants::read);
        taking.rows(ClinicFile.PROCEDURES).stream()
                .collect(Collectors.groupingBy(
                        row -> new Key(row.text("local_number"), row.text("procedure")),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .values()
                .stream()
                .sorted(Comparator.comparing(rows -> rows.getFirst().text("date")))
                .forEach(rows -> taking.take(rows, () -> take(taking, rows, implants)));
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
        rows.stream().skip(1).forEach(row -> demandSameHead(first, row));
        if (child.isEmpty() || on.isEmpty() || elsewhere.isEmpty() || nextOn.isEmpty() || nextWhy.isEmpty()) {
            return Effect.KNOWN;
        }
        var known = known(child.get());
        var wanted = rows.stream().map(row -> ActCells.content(row, implants)).toList();
        var same = known.get(on.get() + " " + wanted);
        if (same != null) {
            implants.areThose(rows, same.acts());
            return Effect.KNOWN;
        }
        var acts = rows.stream()
                .flatMap(row -> ActCells.read(row, child.get(), implants).stream())
                .toList();
        if (acts.size() < rows.size()) {
            return Effect.KNOWN;
        }
        var data = new ProcedureData(
                on.get(),
                elsewhere.get(),
                first.textOrNull("surgeon"),
                first.textOrNull("note"),
                acts,
                new NextLook(nextOn.get(), nextWhy.get()));
        var id = new ProcedureId(StableIds.of(child.get().value(), "procedure", on.get() + " " + wanted));
        demand(treatments.record(child.get(), id, data));
        implants.areNew(rows);
        return Effect.NEW;
    }

    private static void demandSameHead(ClinicRow first, ClinicRow row) {
        for (var column : List.of("date", "elsewhere", "surgeon", "note", "next_date", "next_why")) {
            if (!row.text(column).equals(first.text(column))) {
                row.cells()
                        .refuse(
                                column,
                                "line " + first.line() + " says \"" + first.text(column)
                                        + "\" of the same procedure. Both say the same, or it is another procedure.");
            }
        }
    }

    private static void demand(RecordOutcome outcome) {
        if (outcome instanceof RecordOutcome.Stopped(var stops)) {
            throw new RowRefused(
                    "kind",
                    stops.stream()
                            .map(stop -> Texts.of(stop.reason()))
                            .distinct()
                            .collect(Collectors.joining(" ")));
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
                    procedures.add(ActCells.row(one.number(), Integer.toString(number), data, act, names));
                }
            }
            names.rows(one.number()).forEach(implants::add);
        }
        return Map.of(ClinicFile.PROCEDURES, procedures, ClinicFile.IMPLANTS, implants);
    }
}
