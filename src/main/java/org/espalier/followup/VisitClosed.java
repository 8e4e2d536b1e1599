package org.espalier.followup;

import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/** A visit is over. Told in the transaction that closes it: a listener that throws undoes the whole of it. */
public record VisitClosed(ChildId child, SiteId site, VisitId visit, VisitState state) {}
