package org.espalier.interchange;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** What was decided and seen beside the procedures, taken after them: a growth plate closes around what is in. */
@Component
@Order(6)
class TreatmentFactsPart implements ClinicPart {

    private final List<FactSheet<?>> sheets;
    private final FactTaking facts;

    TreatmentFactsPart(TargetSheet targets, ClosureSheet closures, ComplicationSheet complications, FactTaking facts) {
        sheets = List.of(targets, closures, complications);
        this.facts = facts;
    }

    @Override
    public void take(Taking taking) {
        sheets.forEach(sheet ->
                taking.rows(sheet.file()).forEach(row -> taking.take(row, () -> facts.take(taking, row, sheet))));
    }

    @Override
    public Map<ClinicFile, List<List<String>>> rows(Giving giving) {
        Map<ClinicFile, List<List<String>>> rows = new LinkedHashMap<>();
        sheets.forEach(sheet -> rows.put(sheet.file(), facts.rows(giving, sheet)));
        return rows;
    }
}
