package org.espalier.demo;

import org.espalier.access.SiteId;
import org.espalier.access.StaffId;

/** Who does the work at one hospital of the demonstration. */
record DemoTeam(SiteId site, StaffId nurse, StaffId radiographer, StaffId surgeon) {}
