package org.espalier.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Everything that was written down of a child's treatment, before anything is derived from it. */
record TreatmentRecord(
        List<Procedure> procedures,
        FactLog<Plan> plans,
        FactLog<Target> targets,
        FactLog<ImplantFinding> findings,
        FactLog<Maturity> maturities,
        FactLog<CareStep> careSteps,
        FactLog<Complication> complications,
        FactLog<TheatreCheck> checks) {

    TreatmentRecord {
        procedures = List.copyOf(procedures);
    }

    List<Deed> deeds() {
        return Deed.of(Procedure.standing(procedures));
    }

    Optional<Procedure> procedure(ProcedureId id) {
        return procedures.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /** The same with one procedure more. */
    TreatmentRecord with(Procedure one) {
        var more = new ArrayList<>(procedures);
        more.add(one);
        return new TreatmentRecord(more, plans, targets, findings, maturities, careSteps, complications, checks);
    }

    /** The same with one fact more, of whatever kind. */
    @SuppressWarnings("unchecked")
    <F extends TreatmentFact> TreatmentRecord with(FactTable<F> table, Written<F> one) {
        return new TreatmentRecord(
                procedures,
                table == FactTable.PLANS ? plans.with((Written<Plan>) one) : plans,
                table == FactTable.TARGETS ? targets.with((Written<Target>) one) : targets,
                table == FactTable.FINDINGS ? findings.with((Written<ImplantFinding>) one) : findings,
                table == FactTable.MATURITIES ? maturities.with((Written<Maturity>) one) : maturities,
                careSteps,
                complications,
                checks);
    }
}
