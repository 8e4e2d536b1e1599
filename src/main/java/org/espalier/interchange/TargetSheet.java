package org.espalier.interchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.science.quantity.Angle;
import org.espalier.treatment.Target;
import org.espalier.treatment.Treatment;
import org.springframework.stereotype.Component;

/** What physes and limbs are guided to. */
@Component
class TargetSheet implements FactSheet<Target> {

    private static final double FARTHEST = 180;
    private static final int DECIMALS = 2;

    @Override
    public ClinicFile file() {
        return ClinicFile.TARGETS;
    }

    @Override
    public Optional<Target> read(ClinicRow row) {
        var on = row.cells().date("date");
        var where = PhysisCells.read(row);
        var degrees = row.cells().number("degrees", -FARTHEST, FARTHEST);
        var because = row.cells().name("because");
        return on.isEmpty() || where.isEmpty() || degrees.isEmpty() || because.isEmpty()
                ? Optional.empty()
                : Optional.of(new Target(
                        on.get(),
                        where.get().side(),
                        where.get().bone(),
                        where.get().end(),
                        Angle.ofDegrees(degrees.get()),
                        because.get()));
    }

    @Override
    public Map<String, String> cells(Target target) {
        var cells = PhysisCells.of(target.side(), target.bone(), target.end());
        cells.put("date", target.on().toString());
        cells.put("degrees", Words.of(target.angle().degrees(), DECIMALS));
        cells.put("because", target.because());
        return cells;
    }

    @Override
    public List<Target> standing(Treatment treatment) {
        return treatment.targets().facts();
    }
}
