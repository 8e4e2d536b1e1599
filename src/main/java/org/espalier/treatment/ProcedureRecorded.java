package org.espalier.treatment;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/**
 * A procedure was recorded, new or in place of an earlier one. Told in the transaction that records it: a listener that
 * throws undoes the whole of it.
 *
 * @param physes those it was about, in the order of its acts
 * @param supersedes the procedure it stands in place of
 * @param holder under whose name the stock gave what was used: the first record of the procedure, whatever came in its
 *     place. The stock has moved when this is told.
 */
public record ProcedureRecorded(
        ChildId child,
        SiteId site,
        List<PhysisKey> physes,
        NextLook next,
        UUID procedure,
        Optional<UUID> supersedes,
        UUID holder) {

    public ProcedureRecorded {
        physes = List.copyOf(physes);
    }
}
