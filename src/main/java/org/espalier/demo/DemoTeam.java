package org.espalier.demo;

import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;

/**
 * Who does the work at one hospital of the demonstration.
 *
 * @param secondReader another surgeon of the hospital, where there is one
 */
record DemoTeam(SiteId site, StaffId nurse, StaffId radiographer, StaffId surgeon, Optional<StaffId> secondReader) {}
