package org.espalier.interchange;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Complication;
import org.espalier.treatment.Treatment;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What went wrong. After which procedure is not carried: its day and the child's procedures tell. */
@Component
class ComplicationSheet implements FactSheet<Complication> {

    private static final Map<String, Complication.Kind> KINDS = Words.all(Complication.Kind.class);
    private static final Map<String, Complication.Grade> GRADES = grades();

    private static Map<String, Complication.Grade> grades() {
        Map<String, Complication.Grade> grades = new LinkedHashMap<>();
        for (var grade : Complication.Grade.values()) {
            grades.put(grade.name(), grade);
        }
        return grades;
    }

    @Override
    public ClinicFile file() {
        return ClinicFile.COMPLICATIONS;
    }

    @Override
    public Optional<Complication> read(ClinicRow row) {
        var on = row.cells().date("date");
        var kind = row.cells().oneOf("kind", KINDS);
        var grade = row.cells().oneOf("grade", GRADES);
        @Nullable
        Side side = row.cells().isEmpty("side") ? null : PhysisCells.side(row).orElse(null);
        return on.isEmpty() || kind.isEmpty() || grade.isEmpty()
                ? Optional.empty()
                : Optional.of(new Complication(on.get(), kind.get(), grade.get(), null, side, row.textOrNull("note")));
    }

    @Override
    public Map<String, String> cells(Complication complication) {
        var side = complication.side();
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("date", complication.on().toString());
        cells.put("kind", Words.of(complication.kind()));
        cells.put("grade", complication.grade().name());
        cells.put("side", side == null ? "" : side.letter());
        cells.put("note", Words.text(complication.note()));
        return cells;
    }

    @Override
    public List<Complication> standing(Treatment treatment) {
        return treatment.complications().facts();
    }
}
