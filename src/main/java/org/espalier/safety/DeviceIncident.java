package org.espalier.safety;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.treatment.ImplantFinding;
import org.espalier.treatment.ImplantId;

/**
 * What broke in a child, for the maker and the authority.
 *
 * @param site the hospital that reported it
 * @param product what was put in, as far as it is known
 * @param lots the lot, or the lots it may be of
 * @param what what was seen, and what was done
 */
public record DeviceIncident(
        UUID id,
        ChildId child,
        SiteId site,
        ImplantId implant,
        ImplantFinding.Part part,
        LocalDate seenOn,
        String product,
        String lots,
        String what,
        String by,
        Instant at) {}
