package org.espalier.treatment;

import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/**
 * A procedure should not have been recorded for this child. Told in the transaction that withdraws it.
 *
 * @param holder under whose name the stock gave what was used: the first record of the procedure. The stock has it back
 *     when this is told.
 */
public record ProcedureWithdrawn(ChildId child, SiteId site, UUID procedure, UUID holder) {}
