package org.espalier.followup;

import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/** An attempt to reach a family was written down. Told in the same transaction. */
public record FamilyTried(ChildId child, SiteId site, Channel channel) {}
