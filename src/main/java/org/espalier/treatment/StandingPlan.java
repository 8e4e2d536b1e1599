package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.patient.FactId;
import org.jspecify.annotations.Nullable;

/**
 * A plan that stands.
 *
 * @param first what names it since it was first decided, however often it was changed
 * @param by name of who wrote it down last; null for the house itself
 * @param done when and by what it was done; empty while it waits
 */
public record StandingPlan(
        FactId id, FactId first, Plan plan, @Nullable String by, Optional<Done> done) {

    /** The procedure with which a plan was done. */
    public record Done(LocalDate on, ProcedureId procedure) {}

    public boolean isWaiting() {
        return done.isEmpty();
    }

    /** Whether it stood and waited on the day. */
    boolean waitedOn(LocalDate day) {
        return !day.isBefore(plan.on())
                && done.filter(one -> !day.isBefore(one.on())).isEmpty();
    }
}
