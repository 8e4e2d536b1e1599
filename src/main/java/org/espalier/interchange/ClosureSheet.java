package org.espalier.interchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.treatment.Maturity;
import org.espalier.treatment.Treatment;
import org.springframework.stereotype.Component;

/** Growth plates that were seen closed. */
@Component
class ClosureSheet implements FactSheet<Maturity> {

    @Override
    public ClinicFile file() {
        return ClinicFile.CLOSURES;
    }

    @Override
    public Optional<Maturity> read(ClinicRow row) {
        var on = row.cells().date("date");
        var where = PhysisCells.read(row);
        var reader = row.cells().name("reader");
        var told = row.dateOrNull("retained_told_on");
        var removeBy = row.dateOrNull("remove_by");
        if (on.isEmpty() || where.isEmpty() || reader.isEmpty()) {
            return Optional.empty();
        }
        var bone = where.get().bone();
        var end = where.get().end();
        if (bone == null || end == null) {
            row.cells().refuse("bone", FileReason.EMPTY);
            return Optional.empty();
        }
        return Optional.of(new Maturity(on.get(), where.get().side(), bone, end, reader.get(), told, removeBy));
    }

    @Override
    public Map<String, String> cells(Maturity closed) {
        var cells = PhysisCells.of(closed.side(), closed.bone(), closed.end());
        cells.put("date", closed.on().toString());
        cells.put("reader", closed.reader());
        cells.put("retained_told_on", Words.text(closed.retainedToldOn()));
        cells.put("remove_by", Words.text(closed.removeBy()));
        return cells;
    }

    @Override
    public List<Maturity> standing(Treatment treatment) {
        return treatment.maturities().facts();
    }
}
