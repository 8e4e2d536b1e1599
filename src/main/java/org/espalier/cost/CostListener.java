package org.espalier.cost;

import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.film.FilmAssigned;
import org.espalier.film.FilmId;
import org.espalier.film.FilmReceived;
import org.espalier.followup.FamilyTried;
import org.espalier.followup.VisitClosed;
import org.espalier.patient.ChildId;
import org.espalier.treatment.ProcedureRecorded;
import org.espalier.treatment.ProcedureWithdrawn;
import org.espalier.treatment.TreatmentChanged;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;

/**
 * Writes charges in the transaction that writes down what they follow from: neither is kept without the other. Last of
 * all before it is committed, when what an operation took from the shelves is written too.
 */
@Component
class CostListener {

    private final ChargeBook book;
    private final FactClaims claims;
    private final CostJobs.Asking jobs;

    CostListener(ChargeBook book, FactClaims claims, CostJobs.Asking jobs) {
        this.book = book;
        this.claims = claims;
        this.jobs = jobs;
    }

    @TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT)
    void on(ProcedureRecorded recorded) {
        procedures(recorded.child(), recorded.site());
    }

    @TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT)
    void on(ProcedureWithdrawn withdrawn) {
        procedures(withdrawn.child(), withdrawn.site());
    }

    @TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT)
    void on(VisitClosed closed) {
        book.settle(
                closed.child(),
                closed.site(),
                line -> line.source() == ChargeSource.VISIT,
                claims.visits(closed.child()));
        jobs.renew(closed.site(), closed.child());
    }

    @TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT)
    void on(FamilyTried tried) {
        book.settle(
                tried.child(),
                tried.site(),
                line -> line.source() == ChargeSource.LETTER,
                claims.letters(tried.child()));
    }

    @TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT)
    void on(FilmReceived received) {
        received.child().ifPresent(child -> film(received.film(), received.site(), child, true));
    }

    @TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT)
    void on(FilmAssigned assigned) {
        Optional<ChildId> before =
                assigned.before().filter(child -> !assigned.now().equals(Optional.of(child)));
        before.ifPresent(child -> film(assigned.film(), assigned.site(), child, false));
        assigned.now().ifPresent(child -> film(assigned.film(), assigned.site(), child, true));
    }

    @EventListener
    void on(TreatmentChanged changed) {
        jobs.renew(changed.site(), changed.child());
    }

    private void procedures(ChildId child, SiteId site) {
        book.settle(child, site, line -> line.source() == ChargeSource.PROCEDURE, claims.procedures(child, site));
    }

    private void film(FilmId film, SiteId site, ChildId child, boolean theirs) {
        var claimed = theirs ? claims.film(film, site).stream().toList() : List.<Claim>of();
        book.settle(
                child,
                site,
                line -> line.source() == ChargeSource.FILM && line.fact().equals(film.value()),
                claimed);
    }
}
