package org.espalier.treatment;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.StaffId;

/**
 * A deliberate reversal: a tether wanted on the side that lets the deformity grow.
 *
 * @param consent of a second person; without it nothing is planned or recorded on it
 * @param usedBy the procedure that rests on it already
 */
public record Reversal(
        UUID id,
        PhysisKey physis,
        PlateSide plateSide,
        String because,
        StaffId askedBy,
        String askedByName,
        Instant askedAt,
        Optional<Consent> consent,
        Optional<ProcedureId> usedBy) {

    /**
     * The second person's word.
     *
     * @param byPassword given at the screen of the first; else under their own sign-in
     */
    public record Consent(String name, Instant at, boolean byPassword) {}

    /** Whether a tether there may rest on it: agreed by two, and nothing rests on it yet. */
    boolean covers(PhysisKey where, PlateSide side) {
        return consent.isPresent() && usedBy.isEmpty() && physis.equals(where) && plateSide == side;
    }

    Reversal freedFrom(ProcedureId procedure) {
        return usedBy.filter(procedure::equals).isEmpty()
                ? this
                : new Reversal(
                        id, physis, plateSide, because, askedBy, askedByName, askedAt, consent, Optional.empty());
    }
}
