package org.espalier.safety;

import java.time.LocalDate;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.treatment.ImplantFinding;

/** Something that was seen broken in a child, of which there is no report yet. */
public record UnreportedBreak(ChildId child, SiteId site, ImplantFinding.Part part, LocalDate seenOn) {}
