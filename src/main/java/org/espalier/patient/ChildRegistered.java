package org.espalier.patient;

import java.util.UUID;
import org.espalier.access.SiteId;

/**
 * A child was registered; told in the same transaction.
 *
 * @param visit the id the child's first visit must take: it is checked at commit that it is there and open
 */
public record ChildRegistered(ChildId child, SiteId site, UUID visit) {}
