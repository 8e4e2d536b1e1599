package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.patient.ChildId;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.LimbStanding;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureRecorded;
import org.espalier.treatment.TreatmentChanged;
import org.espalier.treatment.TreatmentService;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Opens the next visit with a procedure, asks the rules again when treatment changes, and ends visits when care ends.
 */
@Component
class TreatmentListener {

    private final VisitService visits;
    private final DueByService dueBy;
    private final TreatmentService treatments;

    TreatmentListener(VisitService visits, DueByService dueBy, TreatmentService treatments) {
        this.visits = visits;
        this.dueBy = dueBy;
        this.treatments = treatments;
    }

    /** Whoever was operated on came: the open visit is over, and the next one is due as asked or as the rules say. */
    @EventListener
    void openNext(ProcedureRecorded recorded) {
        var asked = new Visit.Asked(recorded.next().date(), recorded.next().why());
        boolean corrected = recorded.supersedes().isPresent();
        visits.of(recorded.child())
                .open()
                .ifPresent(visit -> visits.afterProcedure(visit, doneOn(recorded), corrected, asked));
    }

    @EventListener
    void askAgain(TreatmentChanged changed) {
        var treated = treatments.of(changed.child());
        if (treated.isInCare()) {
            dueBy.renew(changed.child());
        } else {
            end(
                    changed.child(),
                    treated.limbs().stream()
                            .map(LimbStanding::ended)
                            .flatMap(Optional::stream)
                            .findFirst());
        }
    }

    private LocalDate doneOn(ProcedureRecorded recorded) {
        return treatments.of(recorded.child()).procedures().stream()
                .filter(procedure -> procedure.id().value().equals(recorded.procedure()))
                .map(Procedure::on)
                .findFirst()
                .orElseThrow();
    }

    private void end(ChildId child, Optional<CareStep.EndReason> why) {
        var today = treatments.of(child).today();
        var end = new CareEnd(why.map(reason -> EndReason.valueOf(reason.name())), today, "");
        visits.of(child).open().ifPresent(visit -> visits.record(visit, new Happening.CareEnded(end)));
    }
}
