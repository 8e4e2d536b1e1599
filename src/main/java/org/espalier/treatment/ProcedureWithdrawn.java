package org.espalier.treatment;

import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/** A procedure should not have been recorded for this child. Told in the transaction that withdraws it. */
public record ProcedureWithdrawn(ChildId child, SiteId site, UUID procedure) {}
