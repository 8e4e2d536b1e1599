package org.espalier.cost;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.espalier.treatment.ProcedureKind;

/** The way a limb was treated, told from what was done to it in the order it was done. */
public enum Pathway {
    /** Nothing was done but to look. */
    WATCH,
    BRACE,
    GUIDED_GROWTH,
    OSTEOTOMY,
    FRAME,
    /** The bone was cut or a frame put on after growth had been guided. */
    SALVAGE_AFTER;

    private static final Set<ProcedureKind> CUTS =
            Set.of(ProcedureKind.OSTEOTOMY, ProcedureKind.DEROTATION, ProcedureKind.PLATEAU_ELEVATED);

    /** @param done all that was done to the limb, the first first */
    static Pathway of(List<ProcedureKind> done) {
        int guided = first(done, ProcedureKind::tethers);
        int framed = first(done, ProcedureKind.FRAME_ON::equals);
        int cut = first(done, CUTS::contains);
        if (guided < Math.max(last(done, CUTS::contains), last(done, ProcedureKind.FRAME_ON::equals))) {
            return SALVAGE_AFTER;
        }
        if (framed < done.size()) {
            return FRAME;
        }
        if (cut < done.size()) {
            return OSTEOTOMY;
        }
        if (guided < done.size()) {
            return GUIDED_GROWTH;
        }
        return done.contains(ProcedureKind.BRACE_ON) ? BRACE : WATCH;
    }

    private static int first(List<ProcedureKind> done, Predicate<ProcedureKind> what) {
        int at = 0;
        while (at < done.size() && !what.test(done.get(at))) {
            at++;
        }
        return at;
    }

    private static int last(List<ProcedureKind> done, Predicate<ProcedureKind> what) {
        int at = done.size() - 1;
        while (at >= 0 && !what.test(done.get(at))) {
            at--;
        }
        return at;
    }
}
