package org.espalier.interchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.TreatmentFact;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.espalier.treatment.TreatmentText;
import org.springframework.stereotype.Component;

/** Takes rows that are facts of a child's treatment, and writes them. A fact is known by what it says. */
@Component
class FactTaking {

    private final TreatmentService treatments;
    private final TreatmentFactService facts;

    FactTaking(TreatmentService treatments, TreatmentFactService facts) {
        this.treatments = treatments;
        this.facts = facts;
    }

    /** Takes one row. */
    <F extends TreatmentFact> Effect take(Taking taking, ClinicRow row, FactSheet<F> sheet) {
        Optional<ChildId> child = taking.child(row);
        Optional<F> fact = sheet.read(row);
        return child.isEmpty() || fact.isEmpty() ? Effect.KNOWN : take(child.get(), fact.get(), sheet);
    }

    private <F extends TreatmentFact> Effect take(ChildId child, F fact, FactSheet<F> sheet) {
        var content = sheet.cells(fact);
        boolean known = sheet.standing(treatments.of(child)).stream()
                .anyMatch(one -> sheet.cells(one).equals(content));
        if (known) {
            return Effect.KNOWN;
        }
        var id = new FactId(StableIds.of(child.value(), sheet.file().fileName(), content.toString()));
        demand(facts.record(child, id, fact), "date");
        return Effect.NEW;
    }

    /** What was stopped is said in the words of those who stopped it. */
    static void demand(RecordOutcome outcome, String column) {
        if (outcome instanceof RecordOutcome.Stopped(var stops)) {
            throw new RowRefused(
                    column,
                    FileReason.REFUSED,
                    stops.stream().map(TreatmentText::of).distinct().collect(Collectors.joining(" ")));
        }
    }

    /** The rows of a file, the same said twice once. */
    <F extends TreatmentFact> List<List<String>> rows(Giving giving, FactSheet<F> sheet) {
        List<List<String>> rows = new ArrayList<>();
        for (var one : giving.children()) {
            sheet.standing(treatments.of(one.child().id())).stream()
                    .map(fact -> row(one.number(), sheet.cells(fact), sheet.file()))
                    .distinct()
                    .forEach(rows::add);
        }
        return rows;
    }

    private static List<String> row(String number, Map<String, String> cells, ClinicFile file) {
        cells.put("local_number", number);
        return Giving.row(cells, file);
    }
}
